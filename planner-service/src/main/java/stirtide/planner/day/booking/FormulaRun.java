package stirtide.planner.day.booking;

import java.util.ArrayList;
import java.util.List;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;

/**
 * A stretch of a menu entry fed by one formula: consecutive zones with the same lightener, strength and ratio.
 *
 * @param number number within the entry, from 1
 * @param firstZone place of its first zone in the entry, from 0
 * @param zones its zones in order, at least one
 */
public record FormulaRun(int number, int firstZone, List<MenuZone> zones) {
    public FormulaRun {
        zones = List.copyOf(zones);
    }

    /** The runs of a menu entry in order. */
    public static List<FormulaRun> of(MenuEntry entry) {
        var runs = new ArrayList<FormulaRun>();
        int first = 0;
        for (int i = 1; i <= entry.zones().size(); i++) {
            boolean ends = i == entry.zones().size()
                    || !sameFormula(entry.zones().get(first), entry.zones().get(i));
            if (!ends) continue;
            runs.add(new FormulaRun(runs.size() + 1, first, entry.zones().subList(first, i)));
            first = i;
        }
        return List.copyOf(runs);
    }

    private static boolean sameFormula(MenuZone one, MenuZone other) {
        return one.lightenerId().equals(other.lightenerId())
                && one.strengthHundredths() == other.strengthHundredths()
                && one.ratioThousandths() == other.ratioThousandths();
    }
}
