package stirtide.planner.visits;

import java.util.List;
import java.util.Optional;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.PastVisit;

/**
 * The formula of a client's last visit on the menu of today.
 *
 * @param visit visit it comes from, the client's last with this menu entry
 * @param entry the menu entry with what is planned in place of the menu's formula
 * @param zones one answer for each zone of the entry, in order
 */
public record RepeatedFormula(PastVisit visit, MenuEntry entry, List<RepeatedZone> zones) {
    public RepeatedFormula {
        zones = List.copyOf(zones);
    }

    /** The answer about a zone. */
    public Optional<RepeatedZone> zone(String zone) {
        return zones.stream().filter(one -> one.zone().equals(zone)).findFirst();
    }

    /** What no longer allows the last formula exactly, one sentence for each zone it is about. */
    public List<String> departures() {
        return zones.stream()
                .filter(one -> one.answer() == RepeatedZone.Answer.NEAREST)
                .map(RepeatedZone::sentence)
                .toList();
    }
}
