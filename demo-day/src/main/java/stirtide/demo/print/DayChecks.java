package stirtide.demo.print;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.bar.text.CountText;
import stirtide.demo.play.PlayedDay;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.events.plan.Plan;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.view.DayTotals;
import stirtide.mixing.text.AmountText;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.state.Day;
import stirtide.planner.planning.search.PlanQuestion;

/** Checks of a played day, from its events. */
public final class DayChecks {
    /** Leftovers below this are not weighed; they count as applied. */
    private static final int CRUMB_MILLIGRAMS = 500;

    private DayChecks() {}

    /**
     * One check.
     *
     * @param holds whether it holds
     * @param sentence what was found
     */
    public record Check(boolean holds, String sentence) {}

    /** All checks of a played day. */
    public static List<Check> of(DaySetup setup, PlayedDay day) {
        List<BowlSummary> bowls = BowlSummary.of(day.events());
        return List.of(
                new Check(
                        day.finished(),
                        day.finished()
                                ? "Every client was served, every bowl closed, and the day closed."
                                : "The day did not come to its end."),
                lives(day, bowls),
                ratios(bowls),
                balance(setup, day, bowls),
                onHair(day, bowls),
                plans(day.events()));
    }

    private static Check lives(PlayedDay day, List<BowlSummary> bowls) {
        List<String> dead = new ArrayList<>();
        for (BowlSummary summary : bowls) {
            Instant lastUse = day.chairs().lastUse().get(summary.bowl);
            if (lastUse != null && lastUse.isAfter(summary.lifeEnds)) dead.add(summary.bowl);
        }
        return new Check(
                dead.isEmpty(),
                dead.isEmpty()
                        ? "No bowl was used past its life (" + CountText.of(bowls.size(), "bowl") + ")."
                        : "Used past their life: " + String.join(", ", dead) + ".");
    }

    private static Check ratios(List<BowlSummary> bowls) {
        List<String> wrong = new ArrayList<>();
        for (BowlSummary summary : bowls) {
            if (summary.handedOverAt.isPresent() && !summary.inside) wrong.add(summary.bowl);
        }
        return new Check(
                wrong.isEmpty(),
                wrong.isEmpty()
                        ? "Every bowl that came to a chair was weighed and inside the directions."
                        : "At a chair outside the directions: " + String.join(", ", wrong) + ".");
    }

    private static Check balance(DaySetup setup, PlayedDay day, List<BowlSummary> bowls) {
        DayTotals totals = day.view().totals();
        long mixed = bowls.stream().mapToLong(BowlSummary::mixed).sum();
        long left = bowls.stream().mapToLong(summary -> summary.left).sum();
        long byCause = totals.overMixedByCause().values().stream()
                .mapToLong(Integer::longValue)
                .sum();
        long spread = (long) totals.appliedMilligrams() + totals.residueMilligrams() + totals.overMixedMilligrams();
        boolean holds = mixed == totals.mixedMilligrams()
                && mixed == spread
                && byCause == totals.overMixedMilligrams()
                && left >= byCause
                && left - byCause <= residues(setup, bowls);
        return new Check(
                holds,
                "Mixed " + AmountText.roundedGrams(mixed) + " = on hair "
                        + AmountText.roundedGrams(totals.appliedMilligrams())
                        + " + residue " + AmountText.roundedGrams(totals.residueMilligrams()) + " + over-mixed "
                        + AmountText.roundedGrams(totals.overMixedMilligrams()) + "; the causes add up to "
                        + AmountText.roundedGrams(byCause) + ".");
    }

    private static long residues(DaySetup setup, List<BowlSummary> bowls) {
        return bowls.stream()
                .mapToLong(summary -> setup.salon()
                        .bowlSize(summary.sizeId)
                        .map(BowlSize::residueMilligrams)
                        .orElse(0))
                .sum();
    }

    private static Check onHair(PlayedDay day, List<BowlSummary> bowls) {
        long events = day.view().totals().appliedMilligrams();
        long chairs = day.chairs().appliedMilligrams();
        boolean holds = Math.abs(events - chairs) <= (long) CRUMB_MILLIGRAMS * bowls.size();
        return new Check(
                holds,
                "On hair by the events " + AmountText.roundedGrams(events) + ", by the chairs' own count "
                        + AmountText.roundedGrams(chairs) + "; leftovers under "
                        + AmountText.scaleGrams(CRUMB_MILLIGRAMS)
                        + " a bowl are not weighed.");
    }

    private static Check plans(List<StoredEvent> events) {
        List<String> broken = new ArrayList<>();
        int drawn = 0;
        Day day = Day.UNOPENED;
        SortedMap<Long, Day> days = new TreeMap<>();
        for (StoredEvent stored : events) {
            if (stored.event() instanceof DayEvent.PlanDrawn plan) {
                drawn++;
                broken.addAll(judge(Optional.ofNullable(days.get(plan.plan().basedOnRevision())), plan.plan()));
            }
            day = Evolver.evolve(day, stored);
            days.put(stored.revision(), day);
        }
        return new Check(
                broken.isEmpty() && drawn > 0,
                broken.isEmpty()
                        ? "No hard rule is broken by any of the " + CountText.of(drawn, "plan") + " drawn."
                        : "Hard rules broken: " + String.join("; ", broken.subList(0, Math.min(3, broken.size()))));
    }

    private static List<String> judge(Optional<Day> known, Plan plan) {
        Optional<PlanQuestion> question = known.flatMap(PlanQuestions::of);
        if (question.isEmpty()) return List.of("plan on " + plan.basedOnRevision() + " answers no question");
        return PlanChecker.check(question.get(), plan);
    }
}
