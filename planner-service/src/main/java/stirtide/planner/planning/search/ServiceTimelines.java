package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.mixing.strength.LegalLimits;
import stirtide.planner.planning.search.PlanQuestion.AppliedZone;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;
import stirtide.planner.planning.search.ServiceTimeline.ZoneSlot;

/** Lays services out as timelines. */
final class ServiceTimelines {
    /** Stands for "the directions name no longest processing time". */
    static final int NO_LIMIT = Integer.MAX_VALUE / 2;

    private final PlanQuestion question;
    private final FeedFactory factory;

    ServiceTimelines(PlanQuestion question) {
        this.question = question;
        this.factory = new FeedFactory(question);
    }

    static List<ServiceTimeline> of(PlanQuestion question) {
        ServiceTimelines timelines = new ServiceTimelines(question);
        return question.services().stream().map(timelines::timeline).toList();
    }

    private ServiceTimeline timeline(ServiceTask task) {
        List<ZoneTask> all =
                task.runs().stream().flatMap(run -> run.zones().stream()).toList();
        int minutes = all.stream().mapToInt(ZoneTask::applyMinutes).sum();
        int[] starts = new int[minutes];
        int[] needUpTo = new int[minutes + 1];
        int[] zoneAt = new int[minutes];
        int[] feedAt = new int[minutes];
        List<ZoneSlot> zones = new ArrayList<>();
        List<FeedSegment> feeds = new ArrayList<>();
        List<String> splits = new ArrayList<>();
        int idleFrom = idleFrom(task, all);
        int clock = idleFrom;
        int at = 0;
        for (RunTask run : task.runs()) {
            int first = zones.size();
            for (ZoneTask zone : run.zones()) {
                clock += zone.gapMinutes();
                zones.add(new ZoneSlot(zone, run.lightenerId(), at, at + zone.applyMinutes(), longest(run, zone)));
                for (int i = 1; i <= zone.applyMinutes(); i++, at++, clock++) {
                    starts[at] = clock;
                    zoneAt[at] = zones.size() - 1;
                    needUpTo[at + 1] =
                            needUpTo[at - i + 1] + (int) ((long) zone.needMilligrams() * i / zone.applyMinutes());
                }
            }
            if (zones.size() > first) needUpTo[at] += run.reserveMilligrams();
            split(task, run, zones.subList(first, zones.size()), needUpTo, feeds, splits);
        }
        for (int k = 0; k < feeds.size(); k++)
            java.util.Arrays.fill(feedAt, feeds.get(k).from(), feeds.get(k).to(), k);
        return new ServiceTimeline(task, starts, needUpTo, zoneAt, feedAt, zones, feeds, splits, idleFrom);
    }

    private int idleFrom(ServiceTask task, List<ZoneTask> all) {
        if (all.isEmpty() || all.get(0).begunMinute().isPresent()) return question.nowMinute();
        int applied =
                task.processing().stream().mapToInt(AppliedZone::applyEnd).max().orElse(task.startMinute());
        int from = Math.max(task.startMinute(), applied);
        return Math.max(from, question.nowMinute() - all.get(0).gapMinutes());
    }

    private int longest(RunTask run, ZoneTask zone) {
        return question.rule(run.lightenerId(), zone.technique())
                .map(TechniqueRule::longestProcessingMinutes)
                .orElse(NO_LIMIT);
    }

    private void split(
            ServiceTask task,
            RunTask run,
            List<ZoneSlot> slots,
            int[] needUpTo,
            List<FeedSegment> feeds,
            List<String> splits) {
        int from = 0;
        int before = feeds.size();
        while (from < slots.size()) {
            boolean permits = factory.permits(run, slots.get(from).zone());
            int to = from + 1;
            while (permits
                    && to < slots.size()
                    && factory.permits(run, slots.get(to).zone())) to++;
            feeds.add(factory.feed(run, List.copyOf(slots.subList(from, to)), needUpTo, permits && from == 0));
            from = to;
        }
        if (feeds.size() > before + 1)
            splits.add("Run " + run.run() + " of service " + task.service()
                    + " is split by zones: the directions do not permit one formula for all of them.");
    }

    /** Knows the directions, and keeps one recipe for each formula asked. */
    private static final class FeedFactory {
        private final PlanQuestion question;
        private final Map<String, FeedFormula> recipes = new TreeMap<>();

        FeedFactory(PlanQuestion question) {
            this.question = question;
        }

        boolean permits(RunTask run, ZoneTask zone) {
            return question.rule(run.lightenerId(), zone.technique())
                    .map(rule -> run.strengthHundredths() <= LegalLimits.ceilingHundredths(rule)
                            && run.ratioThousandths() >= rule.lowestRatioThousandths()
                            && run.ratioThousandths() <= rule.highestRatioThousandths())
                    .orElse(false);
        }

        FeedSegment feed(RunTask run, List<ZoneSlot> slots, int[] needUpTo, boolean first) {
            FeedFormula recipe = recipe(run, slots);
            int from = slots.get(0).from();
            int to = slots.get(slots.size() - 1).to();
            int most = 0;
            for (int i = from; i < to; i++) most = Math.max(most, needUpTo[i + 1] - needUpTo[i]);
            return new FeedSegment(
                    run.run(),
                    from,
                    to,
                    recipe,
                    first ? run.live() : List.of(),
                    FeedRefusals.of(question, recipe, most));
        }

        private FeedFormula recipe(RunTask run, List<ZoneSlot> slots) {
            Directions directions = question.directions(run.lightenerId()).orElseGet(() -> unknown(run.lightenerId()));
            List<TechniqueRule> rules = slots.stream()
                    .map(slot -> slot.zone().technique())
                    .distinct()
                    .flatMap(technique -> question.rule(run.lightenerId(), technique).stream())
                    .toList();
            Directions strictest = rules.size() < 2
                    ? directions
                    : directions.withTechniques(rules.stream().reduce(BatchWeights::stricter).stream()
                            .toList());
            String technique = rules.size() < 2
                    ? slots.get(0).zone().technique()
                    : strictest.techniques().get(0).technique();
            String key = run.lightenerId()
                    + '\n'
                    + technique
                    + '\n'
                    + run.strengthHundredths()
                    + '\n'
                    + run.ratioThousandths();
            return recipes.computeIfAbsent(
                    key,
                    k -> new FeedFormula(
                            question, strictest, technique, run.strengthHundredths(), run.ratioThousandths()));
        }

        private static Directions unknown(String lightenerId) {
            return new Directions(
                    lightenerId,
                    lightenerId,
                    "",
                    1,
                    1,
                    false,
                    List.of(),
                    1,
                    java.math.BigDecimal.ZERO,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of());
        }
    }
}
