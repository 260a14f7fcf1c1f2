package stirtide.planner.service;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.view.DayView;

/** Plays a day by what its view shows, each action once and at its planned time. The same views give the same day. */
final class DayPlayer {
    private final Set<String> done = new HashSet<>();

    /** A command and the instant to send it. */
    record Step(Instant at, CommandRequest request) {}

    private record Candidate(Instant at, String key, DayCommand command) {}

    /** The next action; empty when the day is over. */
    Optional<Step> next(DayView view) {
        List<Candidate> candidates = new ArrayList<>();
        view.services().forEach(service -> atTheChair(service, candidates));
        view.queue()
                .forEach(queued -> candidates.add(new Candidate(
                        queued.bowl().mixStart(),
                        "begin-" + queued.bowl().bowl(),
                        new DayCommand.BeginBowl(
                                queued.bowl().bowl(), queued.bowl().personId().orElse("ada")))));
        view.live().forEach(bowl -> candidates.add(atTheBar(bowl)));
        Optional<Candidate> first = candidates.stream()
                .filter(candidate -> !done.contains(candidate.key()))
                .min(Comparator.comparing(Candidate::at).thenComparing(Candidate::key));
        first.ifPresent(candidate -> done.add(candidate.key()));
        return first.map(candidate -> step(view, candidate)).or(() -> closing(view));
    }

    private static Step step(DayView view, Candidate candidate) {
        Instant at = candidate.at().isBefore(view.time()) ? view.time() : candidate.at();
        return new Step(at, SmallSalon.request("step-" + candidate.key(), candidate.command()));
    }

    private Optional<Step> closing(DayView view) {
        return done.add("close") && view.live().isEmpty()
                ? Optional.of(new Step(view.time(), SmallSalon.request("step-close", new DayCommand.CloseDay())))
                : Optional.empty();
    }

    private static void atTheChair(DayView.ServiceCard service, List<Candidate> candidates) {
        if (service.state().equals("BOOKED"))
            candidates.add(new Candidate(
                    service.plannedStart(),
                    "start-" + service.service(),
                    new DayCommand.StartService(service.service())));
        if (service.state().equals("STARTED"))
            nextZone(service)
                    .ifPresent(zone -> candidates.add(new Candidate(
                            zone.applyEnd(),
                            "zone-" + service.service() + "-" + zone.zone().replace(' ', '-'),
                            new DayCommand.FinishZone(service.service(), zone.zone()))));
    }

    private static Optional<PlannedZone> nextZone(DayView.ServiceCard service) {
        Stream<PlannedZone> open =
                service.zones().stream().filter(zone -> !service.zonesDone().contains(zone.zone()));
        return open.findFirst();
    }

    private static Candidate atTheBar(DayView.LiveBowl bowl) {
        return switch (bowl.stage()) {
            case "MIXING" ->
                new Candidate(
                        bowl.mixStart().plus(Duration.ofMinutes(2)),
                        "weigh-" + bowl.bowl(),
                        new DayCommand.WeighBowl(
                                bowl.bowl(),
                                bowl.planned().lightenerMilligrams(),
                                bowl.planned().parts().stream()
                                        .map(part -> new DeveloperPart(part.developerId(), part.milligrams()))
                                        .toList()));
            case "WEIGHED" ->
                new Candidate(
                        bowl.mixStart().plus(Duration.ofMinutes(5)),
                        "hand-" + bowl.bowl(),
                        new DayCommand.HandOverBowl(bowl.bowl()));
            default ->
                new Candidate(
                        bowl.neededUntil().orElse(bowl.mixStart().plus(Duration.ofMinutes(30))),
                        "finish-" + bowl.bowl(),
                        new DayCommand.FinishBowl(bowl.bowl()));
        };
    }
}
