package stirtide.planner.planning.whatif;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlanFigures;
import stirtide.events.plan.PlannedService;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.Planner;

/**
 * The day without any change, against which changes are held.
 *
 * @param day the day
 * @param question what the planner is asked, with the plan below on show
 * @param plan its plan
 * @param figures what that plan costs
 * @param time the day's times
 * @param nowMinute first minute for which something may be suggested
 * @param effort how much may be planned
 */
record BaselinePlan(
        Day day,
        PlanQuestion question,
        Plan plan,
        PlanFigures figures,
        DayTime time,
        int nowMinute,
        SearchEffort effort) {
    /** Rounds for plans that are shown. */
    private static final int ROUNDS = 40;

    static BaselinePlan of(Day day, PlanQuestion question, BooleanSupplier breakOff) {
        SearchEffort effort = new SearchEffort(question.services().size(), breakOff);
        effort.goOn();
        Plan plan = Planner.draw(question, ROUNDS);
        DayTime time = DayTime.of(day.opened());
        return new BaselinePlan(
                day,
                question.withOnShow(Optional.of(plan)),
                plan,
                WhatIfFigures.of(plan),
                time,
                question.nowMinute(),
                effort);
    }

    /** The plan of a changed question, drawn at once. */
    Plan quick(PlanQuestion changed) {
        effort.goOn();
        return Planner.draw(changed, 0);
    }

    /** The plan of a changed question with as much work as the present plan got. */
    Plan thorough(PlanQuestion changed) {
        effort.goOn();
        return Planner.draw(changed, ROUNDS);
    }

    /** Whether a service is at its chair together with another one that it does not share the chair with at present. */
    boolean crowds(Plan then, int service) {
        return overlaps(then, service) > overlaps(plan, service);
    }

    private static long overlaps(Plan plan, int service) {
        return plan.services().stream()
                .filter(each -> each.service() == service)
                .flatMap(own -> plan.services().stream().filter(other -> together(own, other)))
                .count();
    }

    private static boolean together(PlannedService a, PlannedService b) {
        return a.service() != b.service()
                && a.chair() == b.chair()
                && a.start().isBefore(b.end())
                && b.start().isBefore(a.end());
    }
}
