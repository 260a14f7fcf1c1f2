package stirtide.planner.day.history;

import static stirtide.planner.day.state.EventRule.PlanRelevance.NONE;
import static stirtide.planner.day.state.EventRule.PlanRelevance.REPLAN;
import static stirtide.planner.day.state.Recheck.always;
import static stirtide.planner.day.state.Recheck.byCommand;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import stirtide.events.command.DayCommand;
import stirtide.events.day.ClientTests;
import stirtide.events.day.DayEvent.ClientErased;
import stirtide.events.day.DayEvent.FormulaRepeated;
import stirtide.events.day.DayEvent.LevelsRecorded;
import stirtide.events.day.DayEvent.StripRecorded;
import stirtide.events.day.DayEvent.SwatchRecorded;
import stirtide.events.day.DayEvent.TestRecorded;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.allowance.LearnedAllowances;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayNotes;
import stirtide.planner.day.state.EventRule;

/** What is recorded of clients, formulas and mixes for later days, and what is erased of a client. */
public final class ClientHistoryEvents {
    /** A rule for each event of this folder. */
    public static final List<EventRule<?>> RULES = List.of(
            new EventRule<TestRecorded>(
                    TestRecorded.class,
                    NONE,
                    ClientHistoryEvents::tested,
                    e -> "recorded a " + e.kind().name().toLowerCase(Locale.ROOT) + " test of service " + e.service(),
                    byCommand(e -> new DayCommand.RecordTest(e.service(), e.kind(), e.doneAt()))),
            new EventRule<FormulaRepeated>(
                    FormulaRepeated.class,
                    REPLAN,
                    ClientHistoryEvents::repeated,
                    e -> (e.asLastTime() ? "planned as last time: service " : "planned by the menu: service ")
                            + e.service(),
                    byCommand(e -> new DayCommand.RepeatFormula(e.service(), e.asLastTime()))),
            new EventRule<LevelsRecorded>(
                    LevelsRecorded.class,
                    NONE,
                    (day, e, stored) -> noted(
                            day,
                            notes -> notes.leveled(e.service(), e.zone(), e.levelBeforeTenths(), e.levelAfterTenths())),
                    e -> "recorded a level of " + e.zone() + " of service " + e.service(),
                    byCommand(e -> new DayCommand.RecordLevels(
                            e.service(), e.zone(), e.levelBeforeTenths(), e.levelAfterTenths()))),
            new EventRule<SwatchRecorded>(
                    SwatchRecorded.class,
                    NONE,
                    (day, e, stored) -> noted(day, notes -> notes.plus(e.swatch())),
                    e -> "recorded a swatch of " + e.swatch().lightenerId(),
                    byCommand(e -> new DayCommand.RecordSwatch(e.swatch()))),
            new EventRule<StripRecorded>(
                    StripRecorded.class,
                    NONE,
                    (day, e, stored) -> noted(day, notes -> notes.plus(e.strip())),
                    e -> "recorded a strip of " + e.strip().lightenerId(),
                    byCommand(e -> new DayCommand.RecordStrip(e.strip()))),
            new EventRule<ClientErased>(
                    ClientErased.class,
                    NONE,
                    (day, e, stored) -> ClientErasure.of(day, e.clientId()),
                    e -> "forgot who a client was",
                    always()));

    private ClientHistoryEvents() {}

    private static Day tested(Day day, TestRecorded event, StoredEvent stored) {
        var service = day.requireService(event.service());
        var tests = service.booking().tests().orElse(ClientTests.NONE).with(event.kind(), event.doneAt());
        return day.with(service.withBooking(service.booking().withTests(Optional.of(tests))));
    }

    private static Day repeated(Day day, FormulaRepeated event, StoredEvent stored) {
        var service = day.requireService(event.service());
        var changed = service.withBooking(service.booking().withAsLastTime(Optional.of(event.asLastTime())));
        return LearnedAllowances.learn(day.with(changed), changed);
    }

    private static Day noted(Day day, UnaryOperator<DayNotes> change) {
        return day.withLedger(day.ledger().withNotes(change.apply(day.ledger().notes())));
    }
}
