package stirtide.planner.visits;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.PastVisit.PastZone;
import stirtide.events.view.VisitsView;
import stirtide.events.view.VisitsView.Row;
import stirtide.mixing.text.AmountText;

/** Compares two visits side by side, figure by figure. */
public final class VisitComparison {
    private static final String UNKNOWN = "-";

    private VisitComparison() {}

    /** Every zone of either visit, in the order of the first, then what only the second has. */
    public static VisitsView.SideBySide of(PastVisit first, PastVisit second) {
        Set<String> zones = new LinkedHashSet<>();
        first.zones().forEach(zone -> zones.add(zone.zone()));
        second.zones().forEach(zone -> zones.add(zone.zone()));
        List<Row> rows = new ArrayList<>();
        for (String zone : zones) addZone(rows, zone, in(first, zone), in(second, zone));
        return new VisitsView.SideBySide(first.on().toString(), second.on().toString(), rows);
    }

    private static Optional<PastZone> in(PastVisit visit, String zone) {
        return visit.zones().stream().filter(one -> one.zone().equals(zone)).findFirst();
    }

    private static void addZone(List<Row> rows, String name, Optional<PastZone> first, Optional<PastZone> second) {
        List.<Line>of(
                        new Line("lightener", PastZone::lightenerId),
                        new Line("developer", zone -> AmountText.strength(zone.strengthHundredths())),
                        new Line("ratio", zone -> AmountText.ratio(zone.ratioThousandths())),
                        new Line("mixed", zone -> AmountText.grams(zone.mixedMilligrams())),
                        new Line("used", zone -> AmountText.grams(zone.usedMilligrams())),
                        new Line("applied in", zone -> zone.applyMinutes() + " min"),
                        new Line("processed", VisitComparison::processed),
                        new Line("level before", zone -> level(zone.levelBeforeTenths())),
                        new Line("level after", zone -> level(zone.levelAfterTenths())))
                .forEach(line -> rows.add(line.row(name, first, second)));
    }

    /** Real minutes where the rinse was recorded, else the planned ones, called so: {@code "34 min"}, {@code "30 min planned"}. */
    public static String processed(PastZone zone) {
        return zone.rinsedAfterMinutes()
                .map(minutes -> minutes + " min")
                .orElse(zone.processMinutes() + " min planned");
    }

    /** A level in whole or tenths: {@code "8.5"}, {@code "-"} when it was not recorded. */
    public static String level(Optional<Integer> tenths) {
        return tenths.map(level ->
                        BigDecimal.valueOf(level, 1).stripTrailingZeros().toPlainString())
                .orElse(UNKNOWN);
    }

    private record Line(String figure, Function<PastZone, String> of) {
        Row row(String zone, Optional<PastZone> first, Optional<PastZone> second) {
            String one = first.map(of).orElse(UNKNOWN);
            String other = second.map(of).orElse(UNKNOWN);
            return new Row(zone, figure, one, other, !one.equals(other));
        }
    }
}
