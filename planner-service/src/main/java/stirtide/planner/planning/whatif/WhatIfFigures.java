package stirtide.planner.planning.whatif;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlanFigures;
import stirtide.events.plan.PlannedBowl;

/** Figures of plans, their order and their difference in words. */
final class WhatIfFigures {
    private static final int HALF_HOUR_SECONDS = 1800;

    /** Better first, in the order of the planner's objective, then the calmer bar. */
    static final Comparator<PlanFigures> BETTER = Comparator.comparingInt(PlanFigures::stylistMixes)
            .thenComparingInt(PlanFigures::waitMinutes)
            .thenComparingInt(PlanFigures::notAppliedMilligrams)
            .thenComparingInt(PlanFigures::busiestMinutes)
            .thenComparingInt(PlanFigures::bowlCount);

    private WhatIfFigures() {}

    static PlanFigures of(Plan plan) {
        int stylist = (int)
                plan.bowls().stream().filter(bowl -> bowl.personId().isEmpty()).count();
        int notApplied = plan.bowls().stream()
                .mapToInt(bowl -> bowl.formula().totalMilligrams() - bowl.neededMilligrams())
                .sum();
        int busiest = plan.bowls().stream()
                .mapToInt(bowl -> mixingFrom(plan, bowl.mixStart()))
                .max()
                .orElse(0);
        return new PlanFigures(
                stylist,
                plan.totals().waitMinutes(),
                notApplied,
                busiest,
                plan.totals().bowlCount());
    }

    private static int mixingFrom(Plan plan, Instant from) {
        Instant to = from.plusSeconds(HALF_HOUR_SECONDS);
        long seconds = 0;
        for (PlannedBowl bowl : plan.bowls()) {
            if (bowl.personId().isEmpty()) continue;
            long start = Math.max(bowl.mixStart().getEpochSecond(), from.getEpochSecond());
            long end = Math.min(bowl.mixEnd().getEpochSecond(), to.getEpochSecond());
            seconds += Math.max(0, end - start);
        }
        return (int) (seconds / 60);
    }

    /** What changes from one plan to another, in words: "12 minutes less waiting, 3.0 g less thrown away". */
    static String difference(PlanFigures before, PlanFigures then) {
        List<String> parts = new ArrayList<>();
        part(parts, then.waitMinutes() - before.waitMinutes(), " minutes", "waiting");
        part(parts, then.stylistMixes() - before.stylistMixes(), "", "bowls for stylists to mix");
        int milligrams = then.notAppliedMilligrams() - before.notAppliedMilligrams();
        int tenths = (Math.abs(milligrams) + 50) / 100;
        if (tenths > 0)
            parts.add(tenths / 10 + "." + tenths % 10 + " g " + (milligrams < 0 ? "less" : "more") + " not applied");
        part(parts, then.busiestMinutes() - before.busiestMinutes(), " minutes", "mixing in the busiest half hour");
        return parts.isEmpty() ? "no difference" : String.join(", ", parts);
    }

    private static void part(List<String> parts, int difference, String unit, String what) {
        if (difference == 0) return;
        String one = Math.abs(difference) == 1 && unit.equals(" minutes") ? " minute" : unit;
        parts.add(Math.abs(difference) + one + (difference < 0 ? " less " : " more ") + what);
    }
}
