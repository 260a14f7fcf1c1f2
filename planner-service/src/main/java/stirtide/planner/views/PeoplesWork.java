package stirtide.planner.views;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.view.PersonWork;
import stirtide.events.view.PersonWork.Kind;
import stirtide.planner.day.bowl.MixTime;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;
import stirtide.planner.day.state.ServiceState.ZoneDone;

/** What each person has done and is to do on a day: mixes, bowls carried, zones applied. */
final class PeoplesWork {
    private record Piece(String personId, PersonWork work) {}

    private final Day day;
    private final Instant now;
    private final Duration carrying;
    private final List<Piece> pieces = new ArrayList<>();

    PeoplesWork(Day day, Instant now) {
        this.day = day;
        this.now = now;
        carrying = Duration.ofMinutes(day.opened().salon().carryMinutes());
        day.bowls().filter(BowlState::mixedHere).forEach(this::begun);
        QueueCards.of(day).stream()
                .filter(card -> card.batch()
                        .map(batch -> batch.mixedIn().bowl())
                        .map(card.bowl().bowl()::equals)
                        .orElse(true))
                .forEach(card -> ahead(card.bowl()));
        day.services().forEach(this::applied);
    }

    /** The work of a person, by its begin. */
    List<PersonWork> of(String personId) {
        return pieces.stream()
                .filter(piece -> piece.personId().equals(personId))
                .map(Piece::work)
                .sorted(Comparator.comparing(PersonWork::from).thenComparing(PersonWork::kind))
                .toList();
    }

    private void add(String personId, Kind kind, int service, Instant from, Instant to, boolean done) {
        if (from.isBefore(to)) pieces.add(new Piece(personId, new PersonWork(kind, service, from, to, done)));
    }

    private void ahead(PlannedBowl bowl) {
        var mixes = bowl.personId()
                .or(() -> day.service(bowl.service())
                        .flatMap(each -> each.booking().stylistId()));
        mixes.ifPresent(id -> add(id, Kind.MIXING, bowl.service(), bowl.mixStart(), bowl.mixEnd(), false));
        // Who mixes at the chair carries nothing.
        bowl.personId().ifPresent(id -> carry(id, bowl.service(), bowl.mixEnd(), false));
    }

    private void carry(String personId, int service, Instant from, boolean done) {
        add(personId, Kind.CARRYING, service, from, from.plus(carrying), done);
    }

    // No event tells when the last gram was weighed: the minutes of the directions, unless it was at the chair sooner.
    private void begun(BowlState bowl) {
        Instant end = bowl.begunAt().plus(Duration.ofMinutes(MixTime.minutes(day, bowl)));
        if (bowl.mixing() && end.isBefore(now)) end = now;
        var left = bowl.handedOverAt().or(() -> bowl.closed().map(BowlState.Closed::at));
        if (left.isPresent() && left.get().isBefore(end)) end = left.get();
        add(bowl.personId(), Kind.MIXING, bowl.service(), bowl.begunAt(), end, !bowl.mixing());
        if (bowl.handedOverAt().isPresent()) {
            Instant at = bowl.handedOverAt().get();
            Instant begin = at.minus(carrying).isBefore(end) ? end : at.minus(carrying);
            add(bowl.personId(), Kind.CARRYING, bowl.service(), begin, at, true);
        } else if (bowl.live()) {
            carry(bowl.personId(), bowl.service(), !bowl.mixing() && end.isBefore(now) ? now : end, false);
        }
    }

    private void applied(ServiceState service) {
        var stylist = service.booking().stylistId();
        if (stylist.isEmpty()) return;
        for (MenuZone zone : day.menuEntry(service).zones()) {
            var done = service.zonesDone().stream()
                    .filter(each -> each.zone().equals(zone.zone()))
                    .map(ZoneDone::at)
                    .findFirst();
            var planned = service.standing() ? planned(service, zone.zone()) : Optional.<PlannedZone>empty();
            if (done.isPresent()) {
                Instant earliest = service.startedAt().orElse(done.get());
                Instant from = done.get().minus(Duration.ofMinutes(zone.applyMinutes()));
                Instant begin = from.isBefore(earliest) ? earliest : from;
                add(stylist.get(), Kind.APPLYING, service.service(), begin, done.get(), true);
            } else
                planned.ifPresent(each -> add(
                        stylist.get(), Kind.APPLYING, service.service(), each.applyStart(), each.applyEnd(), false));
        }
    }

    private Optional<PlannedZone> planned(ServiceState service, String zone) {
        return day.plan().stream()
                .flatMap(plan -> plan.services().stream())
                .filter(each -> each.service() == service.service())
                .flatMap(each -> each.zones().stream())
                .filter(each -> each.zone().equals(zone))
                .findFirst();
    }
}
