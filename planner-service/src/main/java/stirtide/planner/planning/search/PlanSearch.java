package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import stirtide.planner.planning.stagger.SearchRounds;

/**
 * Finds a plan: inserts the services in several orders, keeps the best, then takes services out and puts them back in
 * another order, again and again, keeping what is better. Always has a plan; more rounds only make it better.
 */
final class PlanSearch {
    private static final int MOST_REMOVED = 5;
    private static final int NEAR_MINUTES = 30;
    private static final int MOST_EARLY_MINUTES = 6;
    /** A round of the engine takes about as long as a few rounds here. */
    private static final int ROUNDS_PER_ENGINE_ROUND = 4;

    private final PlanQuestion question;
    private final List<ServiceTimeline> timelines;
    private final ShownPlan shown;
    private final ServiceInserter inserter;
    private final SeededNumbers numbers;
    private final int frozenBefore;
    private @Nullable SearchScore ideal;

    PlanSearch(PlanQuestion question, List<ServiceTimeline> timelines, ShownPlan shown) {
        this.question = question;
        this.timelines = timelines;
        this.shown = shown;
        this.inserter = new ServiceInserter(question, shown);
        this.numbers = SeededNumbers.of(question);
        this.frozenBefore = question.nowMinute() + question.frozenMinutes();
    }

    PlanDraft run(SearchRounds rounds) {
        int keepBefore = frozenBefore;
        PlanDraft best = first(keepBefore);
        if (best.score().waitMinutes() > 0 && anyFrozen()) {
            PlanDraft unfrozen = first(question.nowMinute());
            if (lessWaiting(unfrozen, best)) {
                best = unfrozen;
                keepBefore = question.nowMinute();
            }
        }
        if (unbeatable(best)) return best;
        SearchRounds share = rounds.part(rounds.granted() / 3);
        PlanDraft seeded = seeded(keepBefore, rounds.part(1 + rounds.granted() / ROUNDS_PER_ENGINE_ROUND));
        improve(best, keepBefore, share);
        improve(seeded, keepBefore, share);
        best = better(best, seeded);
        improve(best, keepBefore, rounds);
        return best;
    }

    /** The stagger engine's plan; services with mixes that should not move are placed before it. */
    private PlanDraft seeded(int keepBefore, SearchRounds rounds) {
        PlanDraft draft = new PlanDraft(question, timelines, inserter);
        List<Integer> free = new ArrayList<>();
        for (int place : byStart(keepBefore))
            if (shown.mixes(timelines.get(place).task(), keepBefore).isEmpty()) free.add(place);
            else draft.insert(place, keepBefore, 0);
        new StaggerSeeding(question, timelines, draft).place(free, rounds, keepBefore, numbers.seed());
        return draft;
    }

    /**
     * A complete plan at once: what is shown and still fits, and the rest around it. The rounds are for days on which
     * clients would wait longer than shown.
     */
    PlanDraft quick(int rounds) {
        List<Integer> byStart = byStart(frozenBefore);
        PlanDraft best = shown.any() ? kept(byStart, frozenBefore, true) : build(byStart, frozenBefore);
        if (noWorse(best)) return best;
        if (shown.any()) best = better(best, kept(byStart, frozenBefore, false));
        if (noWorse(best)) return best;
        best = better(best, build(byStart, frozenBefore));
        if (anyFrozen()) {
            PlanDraft unfrozen = build(byStart, question.nowMinute());
            if (lessWaiting(unfrozen, best)) best = unfrozen;
        }
        if (rounds == 0 || noWorse(best)) return best;
        improve(best, frozenBefore, SearchRounds.of(rounds));
        return best;
    }

    private boolean noWorse(PlanDraft draft) {
        SearchScore score = draft.score();
        return score.overMinutes() + score.stylistMixes() == 0
                && score.waitMinutes() <= (shown.any() ? shown.waitMinutes() : 0);
    }

    private static PlanDraft better(PlanDraft one, PlanDraft other) {
        return other.score().compareTo(one.score()) < 0 ? other : one;
    }

    /** Mixes that are about to start move only for this. */
    private static boolean lessWaiting(PlanDraft one, PlanDraft other) {
        return one.score().waitMinutes() < other.score().waitMinutes()
                && one.score().compareTo(other.score()) < 0;
    }

    /**
     * Services that nothing has happened to stay as shown, the others go around them.
     *
     * @param waiting whether services that wait stay as well
     */
    private PlanDraft kept(List<Integer> order, int keepBefore, boolean waiting) {
        PlanDraft draft = new PlanDraft(question, timelines, inserter);
        List<Integer> left = new ArrayList<>();
        for (int place : order)
            ShownPlanReuse.of(timelines.get(place), draft.bar(), shown)
                    .filter(plan -> waiting || plan.score().waitMinutes() == 0)
                    .ifPresentOrElse(plan -> draft.put(place, plan), () -> left.add(place));
        for (int place : left) draft.insert(place, keepBefore, 0);
        return draft;
    }

    private boolean anyFrozen() {
        return timelines.stream()
                .anyMatch(
                        timeline -> !shown.mixes(timeline.task(), frozenBefore).isEmpty());
    }

    /** What the services would cost if each had the bar to itself. */
    private SearchScore ideal() {
        if (ideal != null) return ideal;
        ResourceCalendar bar = new ResourceCalendar(question);
        SearchScore sum = SearchScore.ZERO;
        for (ServiceTimeline timeline : timelines)
            sum = sum.plus(
                    inserter.insert(timeline, bar, question.nowMinute(), 0).score());
        ideal = sum.minus(SearchScore.moves(sum.moves()));
        return ideal;
    }

    boolean unbeatable(PlanDraft draft) {
        SearchScore score = draft.score();
        return score.minus(SearchScore.moves(score.moves())).compareTo(ideal()) <= 0;
    }

    private List<Integer> byStart(int keepBefore) {
        return IntStream.range(0, timelines.size())
                .boxed()
                .sorted(Comparator.<Integer>comparingInt(
                                place -> shown.mixes(timelines.get(place).task(), keepBefore)
                                                .isEmpty()
                                        ? 1
                                        : 0)
                        .thenComparing(place -> firstMinute(timelines.get(place))))
                .toList();
    }

    private PlanDraft first(int keepBefore) {
        List<Integer> byStart = byStart(keepBefore);
        PlanDraft best = shown.any() ? kept(byStart, keepBefore, true) : build(byStart, keepBefore);
        if (unbeatable(best)) return best;
        if (shown.any() && best.score().waitMinutes() > 0) best = better(best, kept(byStart, keepBefore, false));
        for (List<Integer> order : orders(byStart)) {
            best = better(best, build(order, keepBefore));
            if (unbeatable(best)) return best;
        }
        if (best.score().waitMinutes() == 0) return best;
        return better(best, build(byStart, keepBefore, MOST_EARLY_MINUTES));
    }

    private List<List<Integer>> orders(List<Integer> byStart) {
        List<List<Integer>> orders = new ArrayList<>();
        if (shown.any()) orders.add(byStart);
        orders.add(sorted(byStart, Comparator.comparingInt(place -> -firstMinute(timelines.get(place)))));
        orders.add(sorted(
                byStart, Comparator.comparingInt(place -> -timelines.get(place).minutes())));
        return orders;
    }

    private static List<Integer> sorted(List<Integer> timelines, Comparator<Integer> order) {
        return timelines.stream().sorted(order).toList();
    }

    private static int firstMinute(ServiceTimeline timeline) {
        return timeline.minutes() == 0 ? 0 : timeline.starts()[0];
    }

    private PlanDraft build(List<Integer> order, int keepBefore) {
        return build(order, keepBefore, 0);
    }

    private PlanDraft build(List<Integer> order, int keepBefore, int early) {
        PlanDraft draft = new PlanDraft(question, timelines, inserter);
        for (int place : order) draft.insert(place, keepBefore, early);
        return draft;
    }

    private void improve(PlanDraft draft, int keepBefore, SearchRounds rounds) {
        for (int round = 0; rounds.another(round) && !unbeatable(draft); round++) improve(draft, keepBefore);
    }

    private void improve(PlanDraft draft, int keepBefore) {
        List<Integer> chosen = chosen(draft);
        SearchScore before = draft.score();
        List<ServicePlan> removed = new ArrayList<>();
        for (int place : chosen) removed.add(draft.remove(place));
        List<Integer> order = new ArrayList<>(chosen);
        numbers.shuffle(order);
        order.sort(Comparator.comparingInt(
                place -> shown.mixes(timelines.get(place).task(), keepBefore).isEmpty() ? 1 : 0));
        int early = numbers.roll(2) == 0 ? 0 : 1 + numbers.roll(MOST_EARLY_MINUTES);
        for (int i = 0; i < order.size(); i++) draft.insert(order.get(i), keepBefore, i + 1 < order.size() ? early : 0);
        if (draft.score().compareTo(before) < 0) return;
        for (int place : chosen) draft.remove(place);
        for (int i = 0; i < chosen.size(); i++) draft.put(chosen.get(i), removed.get(i));
    }

    /** A service in trouble or any, and some that are mixed for at about the same time. */
    private List<Integer> chosen(PlanDraft draft) {
        List<Integer> troubled = IntStream.range(0, timelines.size())
                .filter(place -> inTrouble(draft.plan(place)))
                .boxed()
                .toList();
        int seed = troubled.isEmpty() || numbers.roll(4) == 0
                ? numbers.roll(timelines.size())
                : troubled.get(numbers.roll(troubled.size()));
        List<Integer> near = new ArrayList<>();
        for (int place = 0; place < timelines.size(); place++)
            if (place != seed && near(draft.plan(seed), draft.plan(place))) near.add(place);
        numbers.shuffle(near);
        List<Integer> chosen = new ArrayList<>(List.of(seed));
        chosen.addAll(near.subList(0, Math.min(near.size(), 1 + numbers.roll(MOST_REMOVED))));
        return chosen;
    }

    private static boolean inTrouble(ServicePlan plan) {
        return plan.score().waitMinutes() > 0
                || plan.assignments().stream()
                        .anyMatch(assignment -> assignment.person() == MixAssignment.STYLIST
                                || assignment.use() - assignment.mix()
                                        > assignment.feed().recipe().mixMinutes() + 5);
    }

    private static boolean near(ServicePlan a, ServicePlan b) {
        if (a.assignments().isEmpty() || b.assignments().isEmpty()) return false;
        int aFrom = a.assignments().get(0).mix() - NEAR_MINUTES;
        int aTo = a.assignments().get(a.assignments().size() - 1).mixEnd() + NEAR_MINUTES;
        return b.assignments().stream().anyMatch(assignment -> assignment.mix() < aTo && assignment.mixEnd() > aFrom);
    }
}
