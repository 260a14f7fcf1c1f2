package stirtide.planner.day.history;

import java.time.LocalDate;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.setup.Directions;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.swatch.StripReading;
import stirtide.planner.swatch.SwatchLog;

/** Test swatches and pH strips of mixes. */
final class MixTestRules {
    private MixTestRules() {}

    static Decision swatch(Day day, DayCommand.RecordSwatch command) {
        var swatch = command.swatch();
        var wrong = product(day, swatch.lightenerId(), swatch.on())
                .or(() -> range(SwatchLog.objection(swatch), "SWATCH_OUT_OF_RANGE"));
        return Decision.acceptUnless(wrong, () -> new DayEvent.SwatchRecorded(swatch));
    }

    static Decision strip(Day day, DayCommand.RecordStrip command) {
        var strip = command.strip();
        if (strip.ratioThousandths() < 1 || strip.strengthHundredths() < 0)
            return Decision.refuse("STRIP_OUT_OF_RANGE", "The ratio of the mix is above 0, its strength 0 or more.");
        var wrong = product(day, strip.lightenerId(), strip.on())
                .or(() -> range(StripReading.objection(strip), "STRIP_OUT_OF_RANGE"));
        return Decision.acceptUnless(wrong, () -> new DayEvent.StripRecorded(strip));
    }

    private static Optional<Refusal> product(Day day, String lightenerId, LocalDate on) {
        var known =
                day.opened().directions().stream().map(Directions::lightenerId).toList();
        if (!known.contains(lightenerId))
            return Refusal.of(
                    "PRODUCT_UNKNOWN",
                    "\"" + lightenerId + "\" is no lightener of this day. Accepted: " + Refusal.listed(known) + ".");
        if (on.isAfter(day.opened().date()))
            return Refusal.of(
                    "TEST_NOT_DONE",
                    "A test is recorded once it is done. Accepted: a date up to "
                            + day.opened().date() + ".");
        return Optional.empty();
    }

    private static Optional<Refusal> range(Optional<String> outside, String code) {
        return outside.map(why -> new Refusal(code, "Not accepted: " + why + "."));
    }
}
