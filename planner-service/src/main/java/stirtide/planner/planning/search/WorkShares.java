package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stirtide.planner.planning.floor.DutySpan;
import stirtide.planner.planning.floor.PlacedBowl;

/**
 * Shares the mixes of a plan among the assistants without moving any: each goes to the one who is free and has had the smallest part of the
 * hours left filled so far. Mixes that keep the person of the plan on show stay with that person.
 */
final class WorkShares {
    private final PlanQuestion question;
    private final FloorTranslation translation;
    private final ShownPlan shown;
    private final List<List<DutySpan>> taken;

    private WorkShares(PlanQuestion question, FloorTranslation translation, ShownPlan shown) {
        this.question = question;
        this.translation = translation;
        this.shown = shown;
        this.taken = IntStream.range(0, question.assistants().size())
                .<List<DutySpan>>mapToObj(each -> new ArrayList<>())
                .toList();
    }

    /** The bowls with their assistants named anew, by start of mixing; as they are where sharing leaves a mix without a person. */
    static List<PlacedBowl> share(
            PlanQuestion question, FloorTranslation translation, ShownPlan shown, List<PlacedBowl> bowls) {
        return new WorkShares(question, translation, shown).share(bowls).orElse(bowls);
    }

    private Optional<List<PlacedBowl>> share(List<PlacedBowl> bowls) {
        List<PlacedBowl> byStart = bowls.stream()
                .sorted(Comparator.comparingInt(PlacedBowl::mixStart))
                .toList();
        List<PlacedBowl> kept = new ArrayList<>();
        int[] place = new int[translation.parts().size()];
        for (PlacedBowl bowl : byStart) if (asShown(bowl, place[bowl.service()]++)) kept.add(bowl);
        kept.forEach(bowl -> take(bowl.assistant(), bowl));
        List<PlacedBowl> shared = new ArrayList<>();
        for (PlacedBowl bowl : byStart) {
            PlacedBowl given = kept.contains(bowl) ? bowl : bowl.mixedBy(leastBusy(bowl));
            if (given.assistant() < 0) return Optional.empty();
            if (!kept.contains(bowl)) take(given.assistant(), given);
            shared.add(given);
        }
        return Optional.of(shared);
    }

    private boolean asShown(PlacedBowl bowl, int place) {
        return shown.mix(translation.parts().get(bowl.service()).timeline().task(), place)
                .filter(mix ->
                        mix.person() == bowl.assistant() && mix.start() == question.nowMinute() + bowl.mixStart())
                .isPresent();
    }

    private void take(int assistant, PlacedBowl bowl) {
        taken.get(assistant).add(busy(bowl));
    }

    private DutySpan busy(PlacedBowl bowl) {
        int mixMinutes = translation
                .parts()
                .get(bowl.service())
                .feed(bowl.from())
                .recipe()
                .mixMinutes();
        return new DutySpan(bowl.mixStart(), bowl.mixStart() + mixMinutes + question.carryMinutes());
    }

    private int leastBusy(PlacedBowl bowl) {
        DutySpan busy = busy(bowl);
        return IntStream.range(0, taken.size())
                .filter(each -> translation.onDuty(each).stream()
                                .anyMatch(duty -> duty.holds(busy.fromMinute(), busy.toMinute()))
                        && taken.get(each).stream().noneMatch(busy::meets))
                .boxed()
                .min(Comparator.comparingDouble(this::filled))
                .orElse(-1);
    }

    private double filled(int assistant) {
        return (double) minutes(taken.get(assistant)) / minutes(translation.onDuty(assistant));
    }

    private static int minutes(List<DutySpan> spans) {
        return spans.stream()
                .mapToInt(span -> span.toMinute() - span.fromMinute())
                .sum();
    }
}
