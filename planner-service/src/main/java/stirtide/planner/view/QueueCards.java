package stirtide.planner.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import stirtide.events.day.DeveloperPart;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.view.DayView.QueuedBowl;
import stirtide.planner.day.Day;
import stirtide.planner.day.ServiceState;

/** The bowls still to be mixed, next first. A bowl that was begun, or whose service is cancelled, is not among them. */
final class QueueCards {
    private QueueCards() {}

    static List<QueuedBowl> of(Day day) {
        var planned = day.plan().stream()
                .flatMap(plan -> plan.bowls().stream())
                .filter(bowl -> !day.closed() && isAhead(day, bowl))
                .sorted(Comparator.comparing(PlannedBowl::mixStart))
                .toList();
        var known = new HashSet<String>();
        day.services().stream()
                .flatMap(service -> service.bowls().stream())
                .forEach(bowl -> known.add(bowl.planned().lightenerId()));
        var queue = new ArrayList<QueuedBowl>();
        for (var bowl : planned)
            queue.add(card(day, bowl, known.add(bowl.formula().lightenerId())));
        return queue;
    }

    private static boolean isAhead(Day day, PlannedBowl bowl) {
        return day.bowl(bowl.bowl()).isEmpty()
                && day.service(bowl.service()).filter(ServiceState::standing).isPresent();
    }

    private static QueuedBowl card(Day day, PlannedBowl bowl, boolean firstOfProduct) {
        var lightener = bowl.formula().lightenerId();
        var parts = bowl.formula().developerParts();
        return new QueuedBowl(
                bowl,
                day.service(bowl.service())
                        .map(service -> service.booking().clientRef())
                        .orElse(""),
                Products.lightener(day, lightener),
                parts.stream()
                        .map(DeveloperPart::developerId)
                        .map(id -> Products.liquid(day, id))
                        .toList(),
                parts.stream()
                        .map(DeveloperPart::developerId)
                        .map(id -> Products.strength(day, id))
                        .toList(),
                firstOfProduct ? Cautions.of(day, lightener) : List.of(),
                bowl.zones().stream()
                        .flatMap(zone -> day.ledger().allowance(bowl.service(), zone).stream()
                                .map(allowance -> zone + " " + allowance.sentence()))
                        .toList());
    }
}
