package stirtide.planner.day;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stirtide.events.command.DayCommand;
import stirtide.events.day.BatchShare;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.events.setup.SetupPiece;
import stirtide.planner.day.setup.People;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;

/** Actions of people in words, and as the commands that asked for them. */
public final class ActionText {
    private ActionText() {}

    /** What was done, for a list: {@code "weighed bowl 7b"}. */
    public static String of(DayEvent event) {
        if (event instanceof DayEvent.ServiceBooked e) return "booked service " + e.service();
        if (event instanceof DayEvent.ServiceMoved e) return "moved service " + e.service();
        if (event instanceof DayEvent.ServiceCancelled e) return "cancelled service " + e.service();
        if (event instanceof DayEvent.ServiceStarted e) return "started service " + e.service();
        if (event instanceof DayEvent.ZoneFinished e) return "finished " + e.zone() + " of service " + e.service();
        if (event instanceof DayEvent.SectionRinsed e)
            return "rinsed section " + e.section() + " of service " + e.service();
        if (event instanceof DayEvent.BowlBegun e) return "began bowl " + e.bowl();
        if (event instanceof DayEvent.BowlWeighed e) return "weighed bowl " + e.bowl();
        if (event instanceof DayEvent.BowlHandedOver e) return "handed over bowl " + e.bowl();
        if (event instanceof DayEvent.BowlFinished e) return "finished bowl " + e.bowl();
        if (event instanceof DayEvent.BowlBinned e) return "binned bowl " + e.bowl();
        if (event instanceof DayEvent.BatchBegun e)
            return "began bowls " + e.shares().get(0).bowl() + " and "
                    + e.shares().get(1).bowl() + " as one mix";
        if (event instanceof DayEvent.BatchWeighed e) return "weighed the mix in bowl " + e.batch();
        if (event instanceof DayEvent.BatchDivided e) return "divided the mix in bowl " + e.batch();
        if (event instanceof DayEvent.BatchBinned e) return "binned the mix in bowl " + e.batch();
        if (event instanceof DayEvent.ShiftChanged e) return "changed the shift of " + e.personId();
        if (event instanceof DayEvent.SetupChanged e) return of(e.piece());
        if (event instanceof DayEvent.AllowancePinned e) return "pinned the allowance of " + e.zone();
        if (event instanceof DayEvent.AllowanceReset e) return "reset the allowance of " + e.zone();
        if (event instanceof DayEvent.StockCounted e) return "counted " + e.productId();
        if (event instanceof DayEvent.GoodsReceived e) return "took in packs of " + e.productId();
        if (event instanceof DayEvent.TestRecorded e)
            return "recorded a " + e.kind().name().toLowerCase(Locale.ROOT) + " test of service " + e.service();
        if (event instanceof DayEvent.FormulaRepeated e)
            return (e.asLastTime() ? "planned as last time: service " : "planned by the menu: service ") + e.service();
        if (event instanceof DayEvent.LevelsRecorded e)
            return "recorded a level of " + e.zone() + " of service " + e.service();
        if (event instanceof DayEvent.SwatchRecorded e)
            return "recorded a swatch of " + e.swatch().lightenerId();
        if (event instanceof DayEvent.StripRecorded e)
            return "recorded a strip of " + e.strip().lightenerId();
        if (event instanceof DayEvent.AllowanceFractionSet) return "set how often allowances are enough";
        if (event instanceof DayEvent.ClientErased) return "forgot who a client was";
        if (event instanceof DayEvent.AlarmAcknowledged) return "acknowledged an alarm";
        if (event instanceof DayEvent.ActionTakenBack) return "took an action back";
        if (event instanceof DayEvent.DayOpened) return "opened the day";
        if (event instanceof DayEvent.DayClosed) return "closed the day";
        if (event instanceof DayEvent.LifeEnding e) return "the life of bowl " + e.bowl() + " is ending";
        if (event instanceof DayEvent.LifeEnded e) return "the life of bowl " + e.bowl() + " ended";
        if (event instanceof DayEvent.BowlDue e) return "bowl " + e.bowl() + " was due";
        if (event instanceof DayEvent.BowlLate e) return "bowl " + e.bowl() + " was late";
        if (event instanceof DayEvent.PlanDrawn) return "a plan was drawn";
        if (event instanceof DayEvent.PlanKept) return "no better plan was found";
        throw new IllegalStateException("no words for " + event.getClass().getSimpleName());
    }

    private static String of(SetupPiece piece) {
        if (piece instanceof SetupPiece.OnePerson one)
            return "set up person " + one.person().personId();
        if (piece instanceof SetupPiece.OneScale one)
            return "set up scale " + one.scale().scaleId();
        if (piece instanceof SetupPiece.OneBowlSize one)
            return "set up bowl size " + one.bowlSize().bowlSizeId();
        if (piece instanceof SetupPiece.OneDeveloper one)
            return "set up developer " + one.developer().developerId();
        if (piece instanceof SetupPiece.OneLightener one)
            return "set up lightener " + one.directions().lightenerId();
        if (piece instanceof SetupPiece.OneMenuEntry one)
            return "set up menu entry " + one.entry().menuId();
        if (piece instanceof SetupPiece.HairFactors) return "set up the factors of hair";
        if (piece instanceof SetupPiece.TakenOut out) return "took out " + out.id();
        return "set up the salon";
    }

    /** Who did what when: {@code "weighed bowl 7b (Ora, 10:05)"}. */
    static String of(Day day, StoredEvent stored) {
        return of(stored.event()) + " (" + People.name(day, stored.actor()) + ", "
                + DayTime.of(day.opened()).clock(stored.time()) + ")";
    }

    /** The command that asks for an event, empty for events that are judged otherwise when the past changes. */
    static Optional<DayCommand> commandOf(DayEvent event) {
        return Optional.ofNullable(orNull(event));
    }

    private static @Nullable DayCommand orNull(DayEvent event) {
        if (event instanceof DayEvent.ServiceBooked e) return new DayCommand.BookService(e.booking());
        if (event instanceof DayEvent.ServiceMoved e)
            return new DayCommand.MoveService(e.service(), e.start(), Optional.of(e.chair()), e.reason());
        if (event instanceof DayEvent.ServiceCancelled e) return new DayCommand.CancelService(e.service(), e.reason());
        if (event instanceof DayEvent.ServiceStarted e) return new DayCommand.StartService(e.service());
        if (event instanceof DayEvent.ZoneFinished e) return new DayCommand.FinishZone(e.service(), e.zone());
        if (event instanceof DayEvent.SectionRinsed e) return new DayCommand.RinseSection(e.service(), e.section());
        if (event instanceof DayEvent.BowlBegun e) return new DayCommand.BeginBowl(e.bowl(), e.personId());
        if (event instanceof DayEvent.BowlWeighed e)
            return new DayCommand.WeighBowl(e.bowl(), e.lightenerMilligrams(), e.developerParts());
        if (event instanceof DayEvent.BowlHandedOver e) return new DayCommand.HandOverBowl(e.bowl());
        if (event instanceof DayEvent.BowlFinished e) return new DayCommand.FinishBowl(e.bowl());
        if (event instanceof DayEvent.BowlBinned e)
            return new DayCommand.BinBowl(e.bowl(), e.leftMilligrams(), e.cause());
        if (event instanceof DayEvent.BatchBegun e)
            return new DayCommand.BeginBatch(
                    e.shares().stream().map(BatchShare::bowl).toList(), e.personId());
        if (event instanceof DayEvent.BatchWeighed e)
            return new DayCommand.WeighBatch(e.batch(), e.lightenerMilligrams(), e.developerParts());
        if (event instanceof DayEvent.BatchDivided e)
            return new DayCommand.DivideBatch(e.batch(), e.pouredMilligrams());
        if (event instanceof DayEvent.BatchBinned e) return new DayCommand.BinBatch(e.batch(), e.cause());
        if (event instanceof DayEvent.ShiftChanged e) return new DayCommand.ChangeShift(e.personId(), e.onDuty());
        if (event instanceof DayEvent.SetupChanged e) return new DayCommand.ChangeSetup(e.piece());
        if (event instanceof DayEvent.AllowancePinned e)
            return new DayCommand.PinAllowance(e.menuId(), e.zone(), e.milligrams());
        if (event instanceof DayEvent.AllowanceReset e) return new DayCommand.ResetAllowance(e.menuId(), e.zone());
        if (event instanceof DayEvent.StockCounted e) return new DayCommand.CountStock(e.productId(), e.milligrams());
        if (event instanceof DayEvent.GoodsReceived e) return new DayCommand.ReceiveGoods(e.productId(), e.packs());
        if (event instanceof DayEvent.TestRecorded e)
            return new DayCommand.RecordTest(e.service(), e.kind(), e.doneAt());
        if (event instanceof DayEvent.FormulaRepeated e)
            return new DayCommand.RepeatFormula(e.service(), e.asLastTime());
        if (event instanceof DayEvent.LevelsRecorded e)
            return new DayCommand.RecordLevels(e.service(), e.zone(), e.levelBeforeTenths(), e.levelAfterTenths());
        if (event instanceof DayEvent.SwatchRecorded e) return new DayCommand.RecordSwatch(e.swatch());
        if (event instanceof DayEvent.StripRecorded e) return new DayCommand.RecordStrip(e.strip());
        if (event instanceof DayEvent.AllowanceFractionSet e) return new DayCommand.SetAllowanceFraction(e.permille());
        if (event instanceof DayEvent.DayClosed) return new DayCommand.CloseDay();
        return null;
    }
}
