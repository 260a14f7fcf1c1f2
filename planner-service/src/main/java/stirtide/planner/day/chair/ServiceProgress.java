package stirtide.planner.day.chair;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.planner.day.allowance.ZoneGrams;
import stirtide.planner.day.booking.FormulaRun;
import stirtide.planner.day.bowl.BowlBalance;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/**
 * How far a started service is, from context alone.
 *
 * <p>A zone begins when its turn has come (the zone before is finished and its gap is over) and a bowl of its run is at
 * the chair. While a bowl is at the chair the zone is applied evenly; while none is, application pauses. Until the zone
 * is recorded as finished at least one minute of it is left. Of several bowls at a chair the first handed over is
 * used first.
 *
 * @param done zones applied, in order
 * @param begunAt when the zone at hand began, empty when it has not or all zones are applied
 * @param elapsedMinutes minutes of the zone at hand that are applied, 0 up to its minutes less one
 * @param usedMilligrams estimate of what was taken from each bowl that was at the chair, by bowl id
 */
public record ServiceProgress(
        List<DoneZone> done, Optional<Instant> begunAt, int elapsedMinutes, Map<String, Integer> usedMilligrams) {

    /** A zone applied, with the run it belongs to, its first and its last application. */
    public record DoneZone(MenuZone zone, int run, Instant begin, Instant end) {}

    /** A stretch during which one bowl was the one in use at its chair. */
    private record Use(BowlState bowl, Instant from, Instant to) {
        long millisWithin(Instant start, Instant end) {
            var first = from.isAfter(start) ? from : start;
            var last = to.isBefore(end) ? to : end;
            return Math.max(0, Duration.between(first, last).toMillis());
        }
    }

    /** ServiceProgress of a service as of an instant, which is not before any event of it. */
    public static ServiceProgress of(Day day, ServiceState service, Instant at) {
        return new Reading(day, service, at).read();
    }

    /** One reading; holds what the steps share. */
    private static final class Reading {
        private final Day day;
        private final ServiceState service;
        private final MenuEntry entry;
        private final Instant at;
        private final List<DoneZone> done = new ArrayList<>();
        private final Map<String, Long> used = new TreeMap<>();
        private Optional<Instant> begunAt = Optional.empty();
        private int elapsedMinutes;

        private Reading(Day day, ServiceState service, Instant at) {
            this.day = day;
            this.service = service;
            this.entry = day.menuEntry(service);
            this.at = at;
        }

        private ServiceProgress read() {
            if (service.startedAt().isPresent()) {
                var turn = service.startedAt().get();
                for (var run : FormulaRun.of(entry)) turn = readRun(run, uses(run.number()), turn);
            }
            var milligrams = new TreeMap<String, Integer>();
            used.forEach((bowl, grams) -> milligrams.put(bowl, (int) Math.min(grams, Integer.MAX_VALUE)));
            return new ServiceProgress(List.copyOf(done), begunAt, elapsedMinutes, milligrams);
        }

        /** Reads the zones of a run; gives when the run was over. */
        private Instant readRun(FormulaRun run, List<Use> uses, Instant before) {
            var turn = before;
            for (var zone : run.zones()) {
                if (done.size() < service.zonesDone().size()) turn = readDone(run, zone, uses, turn);
                else if (done.size() == service.zonesDone().size() && isAtHand(run, zone)) readAtHand(zone, uses, turn);
            }
            return turn;
        }

        private boolean isAtHand(FormulaRun run, MenuZone zone) {
            return run.firstZone() + run.zones().indexOf(zone) == done.size();
        }

        private Instant readDone(FormulaRun run, MenuZone zone, List<Use> uses, Instant before) {
            var end = service.zonesDone().get(done.size()).at();
            var turn = before.plus(Duration.ofMinutes(zone.gapMinutes()));
            var begin = firstUse(uses, turn, end).orElse(turn.isBefore(end) ? turn : before);
            share(zone, uses, begin, end, 1, 1);
            done.add(new DoneZone(zone, run.number(), begin, end));
            return end;
        }

        private void readAtHand(MenuZone zone, List<Use> uses, Instant before) {
            var turn = before.plus(Duration.ofMinutes(zone.gapMinutes()));
            begunAt = firstUse(uses, turn, at.plusMillis(1));
            long all =
                    uses.stream().mapToLong(use -> use.millisWithin(turn, at)).sum();
            long byTime = Math.min(all / Duration.ofMinutes(1).toMillis(), zone.applyMinutes() - 1L);
            elapsedMinutes = (int) Math.min(byTime, minutesByGrams(zone, uses, turn));
            share(zone, uses, turn, at, elapsedMinutes, zone.applyMinutes());
        }

        /**
         * Minutes of the zone at hand that the grams really applied stand for: what a closed bowl gave is known, an open
         * one is taken to give evenly. A bowl that stood unused and was thrown away full has applied nothing.
         */
        private long minutesByGrams(MenuZone zone, List<Use> uses, Instant turn) {
            long need = ZoneGrams.medianMilligrams(day, service, zone);
            if (need == 0) return zone.applyMinutes();
            long whole = Duration.ofMinutes(zone.applyMinutes()).toMillis();
            long given = 0;
            for (var use : uses) {
                long earlier = used.getOrDefault(use.bowl().bowl(), 0L);
                given += use.bowl().closed().isPresent()
                        ? Math.max(0, BowlBalance.of(day, use.bowl()).appliedMilligrams() - earlier)
                        : need * use.millisWithin(turn, at) / whole;
            }
            return given * zone.applyMinutes() / need;
        }

        /** Shares out {@code applied / whole} of a zone's grams over its bowls by the time each was in use. */
        private void share(MenuZone zone, List<Use> uses, Instant from, Instant to, int applied, int whole) {
            long all =
                    uses.stream().mapToLong(use -> use.millisWithin(from, to)).sum();
            if (all == 0) return;
            long need = ZoneGrams.medianMilligrams(day, service, zone);
            long spent = need * applied / whole;
            for (var use : uses) used.merge(use.bowl().bowl(), spent * use.millisWithin(from, to) / all, Long::sum);
        }

        private List<Use> uses(int run) {
            var bowls = service.bowls().stream()
                    .filter(bowl -> bowl.run() == run && bowl.handedOverAt().isPresent())
                    .sorted(Comparator.comparing(bowl -> bowl.handedOverAt().orElseThrow()))
                    .toList();
            var uses = new ArrayList<Use>();
            var free = Instant.EPOCH;
            for (var bowl : bowls) {
                var over = bowl.handedOverAt().orElseThrow();
                var from = over.isAfter(free) ? over : free;
                var end = bowl.closed().map(BowlState.Closed::at).orElse(at.plusMillis(1));
                var to = end.isBefore(bowl.lifeEnds()) ? end : bowl.lifeEnds();
                if (!from.isBefore(to)) continue;
                uses.add(new Use(bowl, from, to));
                free = to;
            }
            return uses;
        }

        private static Optional<Instant> firstUse(List<Use> uses, Instant turn, Instant end) {
            return uses.stream()
                    .filter(use -> use.to().isAfter(turn))
                    .map(use -> use.from().isAfter(turn) ? use.from() : turn)
                    .filter(instant -> instant.isBefore(end))
                    .min(Comparator.naturalOrder());
        }
    }
}
