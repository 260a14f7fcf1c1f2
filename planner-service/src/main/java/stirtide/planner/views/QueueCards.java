package stirtide.planner.views;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.view.DayView.QueuedBowl;
import stirtide.planner.day.state.Day;

/** The bowls still to be mixed, next first. A bowl that was begun, or whose service is cancelled, is not among them. */
final class QueueCards {
    private QueueCards() {}

    static List<QueuedBowl> of(Day day) {
        var order = day.plannedBowls().map(PlannedBowl::bowl).toList();
        var planned = day.plannedBowls()
                .filter(bowl -> !day.closed() && PlannedMixes.isAhead(day, bowl.bowl()))
                .sorted(Comparator.comparing((PlannedBowl bowl) -> PlannedMixes.begin(day, bowl))
                        .thenComparing(bowl -> order.indexOf(PlannedMixes.mixedIn(day, bowl)))
                        .thenComparing(bowl -> !bowl.bowl().equals(PlannedMixes.mixedIn(day, bowl))))
                .toList();
        var known = new HashSet<String>();
        day.bowls().forEach(bowl -> known.add(bowl.planned().lightenerId()));
        var queue = new ArrayList<QueuedBowl>();
        for (var bowl : planned)
            queue.add(card(day, bowl, known.add(bowl.formula().lightenerId())));
        return queue;
    }

    private static QueuedBowl card(Day day, PlannedBowl bowl, boolean firstOfProduct) {
        var lightener = bowl.formula().lightenerId();
        var parts = bowl.formula().developerParts();
        return new QueuedBowl(
                PlannedMixes.timed(day, bowl),
                day.service(bowl.service())
                        .map(service -> service.booking().clientRef())
                        .orElse(""),
                ProductNames.lightener(day, lightener),
                parts.stream()
                        .map(DeveloperPart::developerId)
                        .map(id -> ProductNames.liquid(day, id))
                        .toList(),
                parts.stream()
                        .map(DeveloperPart::developerId)
                        .map(id -> day.opened().strengthHundredths(id))
                        .toList(),
                firstOfProduct ? Cautions.of(day, lightener) : List.of(),
                bowl.zones().stream()
                        .flatMap(zone -> day.ledger().allowance(bowl.service(), zone).stream()
                                .map(allowance -> zone + " " + allowance.sentence()))
                        .toList(),
                BatchCards.of(day, bowl));
    }
}
