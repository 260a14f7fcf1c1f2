package stirtide.planner.day.allowance;

import static stirtide.planner.day.state.EventRule.PlanRelevance.REPLAN;
import static stirtide.planner.day.state.Recheck.byCommand;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent.AllowanceFractionSet;
import stirtide.events.day.DayEvent.AllowancePinned;
import stirtide.events.day.DayEvent.AllowanceReset;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.EventRule;

/** What managers decide about allowances. It reaches services that have not begun. */
public final class AllowanceEvents {
    /** A rule for each event of this folder. */
    public static final List<EventRule<?>> RULES = List.of(
            new EventRule<AllowancePinned>(
                    AllowancePinned.class,
                    REPLAN,
                    (day, e, stored) -> ruled(
                            day,
                            new AllowanceRule(
                                    e.menuId(),
                                    e.zone(),
                                    Optional.of(e.milligrams()),
                                    resetOn(day, e.menuId(), e.zone()))),
                    e -> "pinned the allowance of " + e.zone(),
                    byCommand(e -> new DayCommand.PinAllowance(e.menuId(), e.zone(), e.milligrams()))),
            new EventRule<AllowanceReset>(
                    AllowanceReset.class,
                    REPLAN,
                    (day, e, stored) -> ruled(
                            day,
                            new AllowanceRule(
                                    e.menuId(),
                                    e.zone(),
                                    Optional.empty(),
                                    Optional.of(day.opened().date()))),
                    e -> "reset the allowance of " + e.zone(),
                    byCommand(e -> new DayCommand.ResetAllowance(e.menuId(), e.zone()))),
            new EventRule<AllowanceFractionSet>(
                    AllowanceFractionSet.class,
                    REPLAN,
                    (day, e, stored) -> LearnedAllowances.learnUnstarted(
                            day.withLedger(day.ledger().withFractionPermille(e.permille()))),
                    e -> "set how often allowances are enough",
                    byCommand(e -> new DayCommand.SetAllowanceFraction(e.permille()))));

    private AllowanceEvents() {}

    private static Day ruled(Day day, AllowanceRule rule) {
        return LearnedAllowances.learnUnstarted(
                day.withLedger(day.ledger().ruled(rule)),
                service -> service.booking().menuId().equals(rule.menuId()));
    }

    private static Optional<LocalDate> resetOn(Day day, String menuId, String zone) {
        return day.ledger().rule(menuId, zone).flatMap(AllowanceRule::resetOn);
    }
}
