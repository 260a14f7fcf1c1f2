package stirtide.planner.day.history;

import java.time.LocalDate;
import java.util.List;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.SwatchTest;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.day.state.Day;

/**
 * What later days learn from a day. Small beside the day itself, so that those of years can be kept.
 *
 * @param salonId salon of the day
 * @param date its date
 * @param uses what its zones used
 * @param visits what was mixed for its clients
 * @param swatches test swatches written down on it
 * @param strips pH strips written down on it
 */
public record CarriedDay(
        String salonId,
        LocalDate date,
        List<PastUse> uses,
        List<PastVisit> visits,
        List<SwatchTest> swatches,
        List<MixStrip> strips) {
    /** What later days learn from an opened day in its present state. */
    public static CarriedDay of(Day day) {
        var notebook = day.ledger().notes();
        return new CarriedDay(
                day.opened().salon().salonId(),
                day.opened().date(),
                List.copyOf(PastUses.of(day)),
                List.copyOf(PastVisits.of(day)),
                notebook.swatches(),
                notebook.strips());
    }
}
