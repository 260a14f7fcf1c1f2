package stirtide.planner.views;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.PlannedBatch;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.view.DayView.QueuedBowl;
import stirtide.planner.day.state.BowlIds;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/** The bowls still to be mixed, next first. A bowl that was begun, or whose service is cancelled, is not among them. */
final class QueueCards {
    private QueueCards() {}

    static List<QueuedBowl> of(Day day) {
        var order = day.plan().stream()
                .flatMap(plan -> plan.bowls().stream())
                .map(PlannedBowl::bowl)
                .toList();
        var planned = day.plan().stream()
                .flatMap(plan -> plan.bowls().stream())
                .filter(bowl -> !day.closed() && isAhead(day, bowl.bowl()))
                .sorted(Comparator.comparing((PlannedBowl bowl) -> begin(day, bowl))
                        .thenComparing(bowl -> order.indexOf(mixedIn(day, bowl)))
                        .thenComparing(bowl -> !bowl.bowl().equals(mixedIn(day, bowl))))
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

    static boolean isAhead(Day day, String bowl) {
        return day.bowl(bowl).isEmpty()
                && BowlIds.serviceOf(bowl).stream()
                        .mapToObj(day::service)
                        .flatMap(Optional::stream)
                        .anyMatch(ServiceState::standing);
    }

    private static Instant begin(Day day, PlannedBowl bowl) {
        return BatchCards.planned(day, bowl).map(PlannedBatch::mixStart).orElse(bowl.mixStart());
    }

    /** The bowl that the mix of a bowl is made in, so that two bowls of one mix stand together. */
    private static String mixedIn(Day day, PlannedBowl bowl) {
        return BatchCards.planned(day, bowl)
                .map(batch -> batch.bowlIds().get(0))
                .orElse(bowl.bowl());
    }

    private static QueuedBowl card(Day day, PlannedBowl bowl, boolean firstOfProduct) {
        var lightener = bowl.formula().lightenerId();
        var parts = bowl.formula().developerParts();
        return new QueuedBowl(
                BatchCards.planned(day, bowl)
                        .map(batch -> BatchCards.timed(bowl, batch))
                        .orElse(bowl),
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
                        .map(id -> ProductNames.strength(day, id))
                        .toList(),
                firstOfProduct ? Cautions.of(day, lightener) : List.of(),
                bowl.zones().stream()
                        .flatMap(zone -> day.ledger().allowance(bowl.service(), zone).stream()
                                .map(allowance -> zone + " " + allowance.sentence()))
                        .toList(),
                BatchCards.of(day, bowl));
    }
}
