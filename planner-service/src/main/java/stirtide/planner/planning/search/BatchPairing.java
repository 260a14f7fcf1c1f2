package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBatch;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Scale;
import stirtide.planner.planning.search.PlanQuestion.Assistant;

/**
 * The last step of a plan, where the salon wants it: names pairs of bowls that may be one mix, weighed together and
 * divided at once. Nothing else in the plan changes: no client is served at another time, every bowl keeps its own mix to
 * fall back on. A pair saves minutes of mixing and never takes more grams.
 *
 * <p>Pairs of the plan on show come first and keep person, scale and start where they can; then the pairs whose first
 * uses are closest. The start is the latest that is free, so that the mix is as fresh as can be.
 */
final class BatchPairing {
    /** First uses of the two bowls lie at most so many minutes apart. */
    static final int MOST_APART_MINUTES = 10;

    private final PlanQuestion question;
    private final BatchWeights weights;
    private Plan plan;
    private BatchSlots slots;

    private BatchPairing(PlanQuestion question, Plan plan) {
        this.question = question;
        this.weights = new BatchWeights(question);
        this.plan = plan;
        this.slots = new BatchSlots(question, plan);
    }

    /** The plan with its pairs, none where the salon wants none, and what changed about them. */
    static Plan join(PlanQuestion question, Plan plan) {
        Plan joined = question.oneMixTwoBowls() ? new BatchPairing(question, plan).join() : plan;
        return new BatchChangeText(question).listed(joined);
    }

    private record Pair(PlannedBowl one, PlannedBowl other, Optional<PlannedBatch> shown) {
        List<String> ids() {
            return List.of(one.bowl(), other.bowl());
        }

        int apart(PlanQuestion question) {
            return Math.abs(question.minuteOf(one.neededFrom()) - question.minuteOf(other.neededFrom()));
        }
    }

    private Plan join() {
        List<Pair> pairs = pairs();
        pairs.sort(Comparator.<Pair>comparingInt(pair -> pair.shown().isPresent() ? 0 : 1)
                .thenComparingInt(pair -> pair.apart(question))
                .thenComparing(pair -> pair.one().neededFrom()));
        for (Pair pair : pairs) {
            if (pair.ids().stream().anyMatch(id -> plan.batchOf(id).isPresent())) continue;
            batch(pair).ifPresent(this::add);
        }
        return plan;
    }

    private void add(PlannedBatch batch) {
        List<PlannedBatch> batches = new ArrayList<>(plan.batches());
        batches.add(batch);
        batches.sort(Comparator.comparing(PlannedBatch::mixStart)
                .thenComparing(each -> each.bowlIds().get(0)));
        plan = plan.withBatches(batches);
        slots = new BatchSlots(question, plan);
    }

    private List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>();
        List<PlannedBowl> bowls = plan.bowls();
        for (int i = 0; i < bowls.size(); i++)
            for (int j = i + 1; j < bowls.size(); j++) {
                Pair pair = new Pair(bowls.get(i), bowls.get(j), shown(bowls.get(i), bowls.get(j)));
                if (alike(pair) && (pair.shown().isPresent() || !aboutToStart(pair))) pairs.add(pair);
            }
        return pairs;
    }

    private Optional<PlannedBatch> shown(PlannedBowl one, PlannedBowl other) {
        return question.onShow().stream()
                .flatMap(shown -> shown.batches().stream())
                .filter(batch ->
                        batch.bowlIds().contains(one.bowl()) && batch.bowlIds().contains(other.bowl()))
                .findFirst();
    }

    /** Different clients, one formula, first uses close together, and assistants who mix. */
    private boolean alike(Pair pair) {
        PlannedBowl one = pair.one();
        PlannedBowl other = pair.other();
        return one.service() != other.service()
                && one.personId().isPresent()
                && other.personId().isPresent()
                && pair.apart(question) <= MOST_APART_MINUTES
                && Objects.equals(formula(one), formula(other))
                && developers(one.formula()).equals(developers(other.formula()));
    }

    private List<Object> formula(PlannedBowl bowl) {
        return weights.run(bowl)
                .map(run -> List.<Object>of(run.lightenerId(), run.strengthHundredths(), run.ratioThousandths()))
                .orElseThrow();
    }

    private static List<String> developers(BowlFormula formula) {
        return formula.developerParts().stream().map(DeveloperPart::developerId).toList();
    }

    /** One of these bowls may be laid out already, as shown. */
    private boolean aboutToStart(Pair pair) {
        int frozenBefore = question.nowMinute() + question.frozenMinutes();
        return question.onShow().stream()
                .flatMap(shown -> shown.bowls().stream()
                        .filter(bowl -> pair.ids().contains(bowl.bowl()))
                        .map(shown::beginOf))
                .anyMatch(begin -> question.minuteOf(begin) < frozenBefore);
    }

    private Optional<PlannedBatch> batch(Pair pair) {
        Directions directions =
                question.directions(pair.one().formula().lightenerId()).orElseThrow();
        int minutes = directions.mixMinutes() + PlannedBatch.DIVIDE_MINUTES;
        if (minutes >= 2 * directions.mixMinutes()) return Optional.empty();
        int firstUse = Math.min(
                question.minuteOf(pair.one().neededFrom()),
                question.minuteOf(pair.other().neededFrom()));
        int lastUse = Math.max(
                question.minuteOf(pair.one().neededTo()),
                question.minuteOf(pair.other().neededTo()));
        int latest = firstUse - question.handOverMinutes() - minutes;
        int earliest = Math.max(question.nowMinute(), lastUse - directions.workingLifeMinutes());
        return pair.shown()
                .map(shown -> question.minuteOf(shown.mixStart()))
                .filter(start -> earliest <= start && start <= latest)
                .flatMap(start -> at(pair, directions, start))
                .or(() -> Stream.iterate(latest, start -> start >= earliest, start -> start - 1)
                        .flatMap(start -> at(pair, directions, start).stream())
                        .findFirst());
    }

    private Optional<PlannedBatch> at(Pair pair, Directions directions, int start) {
        int end = start + directions.mixMinutes() + PlannedBatch.DIVIDE_MINUTES;
        Optional<Assistant> person = people(pair)
                .filter(each -> slots.personFree(each, start, end, pair.ids()))
                .findFirst();
        if (person.isEmpty()) return Optional.empty();
        return scales(pair)
                .filter(scale -> slots.scaleFree(scale.scaleId(), start, end, pair.ids()))
                .flatMap(scale -> weights.mix(pair.one(), pair.other(), scale).stream()
                        .filter(mix -> developers(mix.formula())
                                .equals(developers(pair.one().formula())))
                        .map(mix -> batch(pair, directions, start, person.get(), scale, mix)))
                .filter(batch -> slots.bowlsSuffice(batch) && slots.inOrder(batch))
                .findFirst();
    }

    private PlannedBatch batch(
            Pair pair, Directions directions, int start, Assistant person, Scale scale, BatchWeights.Mix mix) {
        int apart =
                pair.one().formula().totalMilligrams() + pair.other().formula().totalMilligrams();
        return new PlannedBatch(
                mix.shares(),
                question.instantOf(start),
                question.instantOf(start + directions.mixMinutes() + PlannedBatch.DIVIDE_MINUTES),
                question.instantOf(start + directions.workingLifeMinutes()),
                person.personId(),
                scale.scaleId(),
                mix.formula(),
                directions.mixMinutes() - PlannedBatch.DIVIDE_MINUTES,
                apart - mix.formula().totalMilligrams());
    }

    /** Who mixes as shown first, then who mixes one of the two, then any other person. */
    private Stream<Assistant> people(Pair pair) {
        List<String> first = Stream.concat(
                        pair.shown().map(PlannedBatch::personId).stream(),
                        Stream.of(pair.one(), pair.other()).flatMap(bowl -> bowl.personId().stream()))
                .toList();
        return question.assistants().stream().sorted(Comparator.comparingInt(each -> place(first, each.personId())));
    }

    private Stream<Scale> scales(Pair pair) {
        List<String> first = Stream.concat(
                        pair.shown().map(PlannedBatch::scaleId).stream(),
                        Stream.of(pair.one().scaleId(), pair.other().scaleId()))
                .toList();
        return question.scales().stream().sorted(Comparator.comparingInt(each -> place(first, each.scaleId())));
    }

    private static int place(List<String> first, String id) {
        int place = first.indexOf(id);
        return place < 0 ? first.size() : place;
    }
}
