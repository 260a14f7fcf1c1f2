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
    private final List<ServiceTimeline> tracks;
    private final ShownPlan shown;
    private final ServiceInserter inserter;
    private final SeededNumbers dice;
    private final int frozenBefore;
    private @Nullable SearchScore ideal;

    PlanSearch(PlanQuestion question, List<ServiceTimeline> tracks, ShownPlan shown) {
        this.question = question;
        this.tracks = tracks;
        this.shown = shown;
        this.inserter = new ServiceInserter(question, shown);
        this.dice = SeededNumbers.of(question);
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
        PlanDraft draft = new PlanDraft(question, tracks, inserter);
        List<Integer> free = new ArrayList<>();
        for (int track : byStart(keepBefore))
            if (shown.mixes(tracks.get(track).task(), keepBefore).isEmpty()) free.add(track);
            else draft.insert(track, keepBefore, 0);
        new StaggerSeeding(question, tracks, draft).place(free, rounds, keepBefore, dice.seed());
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
        PlanDraft draft = new PlanDraft(question, tracks, inserter);
        List<Integer> left = new ArrayList<>();
        for (int track : order)
            ShownPlanReuse.of(tracks.get(track), draft.bar(), shown)
                    .filter(course -> waiting || course.score().waitMinutes() == 0)
                    .ifPresentOrElse(course -> draft.put(track, course), () -> left.add(track));
        for (int track : left) draft.insert(track, keepBefore, 0);
        return draft;
    }

    private boolean anyFrozen() {
        return tracks.stream()
                .anyMatch(track -> !shown.mixes(track.task(), frozenBefore).isEmpty());
    }

    /** What the services would cost if each had the bar to itself. */
    private SearchScore ideal() {
        if (ideal != null) return ideal;
        ResourceCalendar bar = new ResourceCalendar(question);
        SearchScore sum = SearchScore.ZERO;
        for (ServiceTimeline track : tracks)
            sum = sum.plus(inserter.insert(track, bar, question.nowMinute(), 0).score());
        ideal = sum.minus(SearchScore.moves(sum.moves()));
        return ideal;
    }

    boolean unbeatable(PlanDraft draft) {
        SearchScore score = draft.score();
        return score.minus(SearchScore.moves(score.moves())).compareTo(ideal()) <= 0;
    }

    private List<Integer> byStart(int keepBefore) {
        return IntStream.range(0, tracks.size())
                .boxed()
                .sorted(Comparator.<Integer>comparingInt(
                                track -> shown.mixes(tracks.get(track).task(), keepBefore)
                                                .isEmpty()
                                        ? 1
                                        : 0)
                        .thenComparing(track -> firstMinute(tracks.get(track))))
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
        orders.add(sorted(byStart, Comparator.comparingInt(track -> -firstMinute(tracks.get(track)))));
        orders.add(sorted(
                byStart, Comparator.comparingInt(track -> -tracks.get(track).minutes())));
        return orders;
    }

    private static List<Integer> sorted(List<Integer> tracks, Comparator<Integer> order) {
        return tracks.stream().sorted(order).toList();
    }

    private static int firstMinute(ServiceTimeline track) {
        return track.minutes() == 0 ? 0 : track.starts()[0];
    }

    private PlanDraft build(List<Integer> order, int keepBefore) {
        return build(order, keepBefore, 0);
    }

    private PlanDraft build(List<Integer> order, int keepBefore, int early) {
        PlanDraft draft = new PlanDraft(question, tracks, inserter);
        for (int track : order) draft.insert(track, keepBefore, early);
        return draft;
    }

    private void improve(PlanDraft draft, int keepBefore, SearchRounds rounds) {
        for (int round = 0; rounds.another(round) && !unbeatable(draft); round++) improve(draft, keepBefore);
    }

    private void improve(PlanDraft draft, int keepBefore) {
        List<Integer> chosen = chosen(draft);
        SearchScore before = draft.score();
        List<ServicePlan> removed = new ArrayList<>();
        for (int track : chosen) removed.add(draft.remove(track));
        List<Integer> order = new ArrayList<>(chosen);
        dice.shuffle(order);
        order.sort(Comparator.comparingInt(
                track -> shown.mixes(tracks.get(track).task(), keepBefore).isEmpty() ? 1 : 0));
        int early = dice.roll(2) == 0 ? 0 : 1 + dice.roll(MOST_EARLY_MINUTES);
        for (int i = 0; i < order.size(); i++) draft.insert(order.get(i), keepBefore, i + 1 < order.size() ? early : 0);
        if (draft.score().compareTo(before) < 0) return;
        for (int track : chosen) draft.remove(track);
        for (int i = 0; i < chosen.size(); i++) draft.put(chosen.get(i), removed.get(i));
    }

    /** A service in trouble or any, and some that are mixed for at about the same time. */
    private List<Integer> chosen(PlanDraft draft) {
        List<Integer> troubled = IntStream.range(0, tracks.size())
                .filter(track -> inTrouble(draft.course(track)))
                .boxed()
                .toList();
        int seed = troubled.isEmpty() || dice.roll(4) == 0
                ? dice.roll(tracks.size())
                : troubled.get(dice.roll(troubled.size()));
        List<Integer> near = new ArrayList<>();
        for (int track = 0; track < tracks.size(); track++)
            if (track != seed && near(draft.course(seed), draft.course(track))) near.add(track);
        dice.shuffle(near);
        List<Integer> chosen = new ArrayList<>(List.of(seed));
        chosen.addAll(near.subList(0, Math.min(near.size(), 1 + dice.roll(MOST_REMOVED))));
        return chosen;
    }

    private static boolean inTrouble(ServicePlan course) {
        return course.score().waitMinutes() > 0
                || course.portions().stream()
                        .anyMatch(portion -> portion.person() == MixAssignment.STYLIST
                                || portion.use() - portion.mix()
                                        > portion.feed().recipe().mixMinutes() + 5);
    }

    private static boolean near(ServicePlan a, ServicePlan b) {
        if (a.portions().isEmpty() || b.portions().isEmpty()) return false;
        int aFrom = a.portions().get(0).mix() - NEAR_MINUTES;
        int aTo = a.portions().get(a.portions().size() - 1).mixEnd() + NEAR_MINUTES;
        return b.portions().stream().anyMatch(portion -> portion.mix() < aTo && portion.mixEnd() > aFrom);
    }
}
