package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.events.command.DayCommand;
import stirtide.events.day.BatchShare;
import stirtide.events.day.ClientTests;
import stirtide.events.day.DayEvent;
import stirtide.events.day.OverMixCause;
import stirtide.events.day.StoredEvent;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.SetupPiece;
import stirtide.events.setup.SwatchTest;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;

/** No command and no event is forgotten: what the compiler does not check at this release of Java. */
class CompletenessTest {
    private static final SwatchTest SWATCH = new SwatchTest(Given.DATE, "cloud", 2000, 600, 30, 50, 75);
    private static final MixStrip STRIP = new MixStrip(Given.DATE, "cloud", 2000, 600, 100, 5);

    static List<DayCommand> commands() {
        return List.of(
                new DayCommand.OpenDay(Given.setup(), List.of()),
                new DayCommand.BookService(Given.booking("x", "foils", 1, "12:00")),
                new DayCommand.MoveService(1, Given.at("11:00"), Optional.empty(), ""),
                new DayCommand.CancelService(1, ""),
                new DayCommand.StartService(1),
                new DayCommand.FinishZone(1, "crown"),
                new DayCommand.RinseSection(1, 1),
                new DayCommand.BeginBowl("2a", "mika"),
                Scene.weigh("1a", 1, 2),
                new DayCommand.HandOverBowl("1a"),
                new DayCommand.FinishBowl("1a"),
                new DayCommand.BinBowl("1a", 0, OverMixCause.SPILLED),
                new DayCommand.BeginBatch(List.of("1a", "2a"), "bo"),
                new DayCommand.WeighBatch("1a", 1, List.of()),
                new DayCommand.DivideBatch("1a", 1),
                new DayCommand.BinBatch("1a", OverMixCause.SPILLED),
                new DayCommand.ChangeShift("bo", List.of()),
                new DayCommand.ChangeSetup(
                        new SetupPiece.Basics("Tidehouse", 4, 2, 5, Optional.empty(), Optional.empty())),
                new DayCommand.PinAllowance("foils", "crown", 1),
                new DayCommand.ResetAllowance("foils", "crown"),
                new DayCommand.CountStock("dev-6", 0),
                new DayCommand.ReceiveGoods("dev-6", 1),
                new DayCommand.RecordTest(2, ClientTests.Kind.PATCH, Given.at("09:00")),
                new DayCommand.RepeatFormula(2, true),
                new DayCommand.RecordLevels(1, "crown", Optional.of(60), Optional.empty()),
                new DayCommand.RecordSwatch(SWATCH),
                new DayCommand.RecordStrip(STRIP),
                new DayCommand.SetAllowanceFraction(Optional.of(850)),
                new DayCommand.TakeBack(1),
                new DayCommand.AcknowledgeAlarm("x"),
                new DayCommand.CloseDay());
    }

    static List<DayEvent> events() {
        var at = Given.at("10:00");
        return List.of(
                new DayEvent.DayOpened(Given.setup()),
                new DayEvent.ServiceBooked(3, Given.booking("x", "foils", 1, "12:00")),
                new DayEvent.ServiceMoved(1, at, 1, ""),
                new DayEvent.ServiceCancelled(1, ""),
                new DayEvent.ServiceStarted(1),
                new DayEvent.ZoneFinished(1, "crown"),
                new DayEvent.SectionRinsed(1, 1),
                new DayEvent.BowlBegun("2a", 2, 1, "bo", "bar-1", "M", Given.formula(), at),
                new DayEvent.BowlWeighed("1a", 1, List.of(), 2000, true),
                new DayEvent.BowlHandedOver("1a"),
                new DayEvent.BowlFinished("1a"),
                new DayEvent.BowlBinned("1a", 0, OverMixCause.SPILLED),
                new DayEvent.BatchBegun(
                        List.of(new BatchShare("1a", 1, 1, "M", 66_000), new BatchShare("2a", 2, 1, "M", 54_000)),
                        "bo",
                        "bar-1",
                        BatchScene.WHOLE,
                        at),
                new DayEvent.BatchWeighed("1a", 40_000, List.of(new DeveloperPart("dev-9", 80_000)), 2000, true),
                new DayEvent.BatchDivided("1a", 54_000),
                new DayEvent.BatchBinned("1a", OverMixCause.SPILLED),
                new DayEvent.ShiftChanged("bo", List.of()),
                new DayEvent.SetupChanged(
                        new SetupPiece.Basics("Tidehouse", 4, 2, 5, Optional.empty(), Optional.empty())),
                new DayEvent.AllowancePinned("foils", "crown", 1),
                new DayEvent.AllowanceReset("foils", "crown"),
                new DayEvent.StockCounted("dev-6", 0),
                new DayEvent.GoodsReceived("dev-6", 1),
                new DayEvent.TestRecorded(2, ClientTests.Kind.PATCH, at),
                new DayEvent.FormulaRepeated(2, true),
                new DayEvent.LevelsRecorded(1, "crown", Optional.of(60), Optional.empty()),
                new DayEvent.SwatchRecorded(SWATCH),
                new DayEvent.StripRecorded(STRIP),
                new DayEvent.AllowanceFractionSet(Optional.of(850)),
                new DayEvent.ActionTakenBack(5),
                new DayEvent.ClientErased("c000001"),
                new DayEvent.AlarmAcknowledged("x"),
                new DayEvent.DayClosed(),
                new DayEvent.PlanDrawn(Given.plan(5, at)),
                new DayEvent.PlanKept(5, 200, Optional.of(0), Optional.empty(), List.of()),
                new DayEvent.BowlDue("2a", at),
                new DayEvent.BowlLate("2a", at),
                new DayEvent.LifeEnding("1a", at),
                new DayEvent.LifeEnded("1a", at));
    }

    @Test
    void every_command_and_event_has_an_example_here() {
        assertThat(commands().stream().<Class<?>>map(Object::getClass))
                .containsExactlyInAnyOrder(DayCommand.class.getPermittedSubclasses());
        assertThat(events().stream().<Class<?>>map(Object::getClass))
                .containsExactlyInAnyOrder(DayEvent.class.getPermittedSubclasses());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void every_command_gets_an_answer(DayCommand command) {
        var facts = new CommandContext(Given.at("09:55"), "ilka");
        assertThat(Decider.decide(Day.UNOPENED, command, facts)).isNotNull();
        assertThat(Decider.decide(Scene.begun().day, command, facts)).isNotNull();
    }

    @ParameterizedTest
    @MethodSource("events")
    void every_event_changes_the_day_and_has_words(DayEvent event) {
        var day = dayBefore(event);
        var stored = new StoredEvent("e", Given.DAY, day.revision() + 1, Given.at("09:55"), "ilka", "c-9", event);
        assertThat(Evolver.evolve(day, stored).revision()).isEqualTo(day.revision() + 1);
        assertThat(Evolver.text(event)).isNotBlank();
    }

    private static Day dayBefore(DayEvent event) {
        if (event instanceof DayEvent.BatchBegun) return BatchScene.planned().day;
        boolean ofBatch = event.getClass().getSimpleName().startsWith("Batch");
        return ofBatch ? BatchScene.weighed().day : Scene.begun().day;
    }
}
