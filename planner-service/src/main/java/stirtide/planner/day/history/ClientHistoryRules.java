package stirtide.planner.day.history;

import java.time.LocalDate;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.setup.Directions;
import stirtide.planner.day.booking.BookingRules;
import stirtide.planner.day.state.Bookings;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.swatch.StripReading;
import stirtide.planner.swatch.Swatch;
import stirtide.planner.visits.LastVisit;

/** Tests before a service, repeated formulas, levels, swatches and strips. */
public final class ClientHistoryRules {
    private static final int LOWEST_LEVEL = 10;
    private static final int HIGHEST_LEVEL = 100;

    private ClientHistoryRules() {}

    public static Decision test(Day day, DayCommand.RecordTest command, CommandContext facts) {
        var service = day.service(command.service());
        if (service.isEmpty()) return BookingRules.noService(day, command.service());
        if (!service.get().standing()) return BookingRules.cancelled(service.get());
        if (command.doneAt().isAfter(facts.now()))
            return Decision.refuse("TEST_NOT_DONE", "A test is recorded once it is done. Accepted: a time up to now.");
        return Decision.accept(new DayEvent.TestRecorded(command.service(), command.kind(), command.doneAt()));
    }

    public static Decision repeat(Day day, DayCommand.RepeatFormula command) {
        var found = day.service(command.service());
        if (found.isEmpty()) return BookingRules.noService(day, command.service());
        var service = found.get();
        if (!service.standing()) return BookingRules.cancelled(service);
        if (service.startedAt().isPresent() || !service.bowls().isEmpty())
            return Decision.refuse(
                    "SERVICE_STARTED",
                    "Service " + service.service()
                            + " has begun. Only a service without a client in the chair and without a bowl"
                            + " begun can get another formula.");
        if (service.booking().asLastTime().orElse(false) == command.asLastTime())
            return Decision.refuse(
                    "FORMULA_AS_IT_IS",
                    "Service " + service.service() + " is planned "
                            + (command.asLastTime() ? "as last time" : "by the menu")
                            + " already. Nothing is left to do.");
        if (command.asLastTime()
                && LastVisit.of(day.opened(), service.booking()).isEmpty())
            return Decision.refuse(
                    "NO_EARLIER_VISIT",
                    "Nothing is remembered of an earlier visit of this client with the same menu entry. Accepted: a"
                            + " booking whose client reference and menu entry are those of an earlier visit.");
        return Decision.accept(new DayEvent.FormulaRepeated(command.service(), command.asLastTime()));
    }

    public static Decision levels(Day day, DayCommand.RecordLevels command) {
        var service = day.service(command.service());
        if (service.isEmpty()) return BookingRules.noService(day, command.service());
        var zones = Bookings.entry(day, service.get()).zones().stream()
                .map(zone -> zone.zone())
                .toList();
        if (!zones.contains(command.zone()))
            return Decision.refuse(
                    "ZONE_UNKNOWN",
                    "\"" + command.zone() + "\" is no zone of service " + command.service() + ". Accepted: "
                            + BookingRules.listed(zones) + ".");
        if (command.levelBeforeTenths().isEmpty() && command.levelAfterTenths().isEmpty())
            return Decision.refuse("LEVEL_MISSING", "Name the level before, the level after, or both.");
        if (!level(command.levelBeforeTenths()) || !level(command.levelAfterTenths()))
            return Decision.refuse("LEVEL_OUT_OF_RANGE", "A level is 1 to 10, in tenths: 10 to 100.");
        return Decision.accept(new DayEvent.LevelsRecorded(
                command.service(), command.zone(), command.levelBeforeTenths(), command.levelAfterTenths()));
    }

    private static boolean level(Optional<Integer> tenths) {
        return tenths.isEmpty() || tenths.get() >= LOWEST_LEVEL && tenths.get() <= HIGHEST_LEVEL;
    }

    public static Decision swatch(Day day, DayCommand.RecordSwatch command) {
        var swatch = command.swatch();
        return product(day, swatch.lightenerId(), swatch.on())
                .or(() -> range(() -> Swatch.of(swatch), "SWATCH_OUT_OF_RANGE"))
                .orElseGet(() -> Decision.accept(new DayEvent.SwatchRecorded(swatch)));
    }

    public static Decision strip(Day day, DayCommand.RecordStrip command) {
        var strip = command.strip();
        if (strip.ratioThousandths() < 1 || strip.strengthHundredths() < 0)
            return Decision.refuse("STRIP_OUT_OF_RANGE", "The ratio of the mix is above 0, its strength 0 or more.");
        return product(day, strip.lightenerId(), strip.on())
                .or(() -> range(() -> StripReading.of(strip), "STRIP_OUT_OF_RANGE"))
                .orElseGet(() -> Decision.accept(new DayEvent.StripRecorded(strip)));
    }

    private static Optional<Decision> product(Day day, String lightenerId, LocalDate on) {
        var known =
                day.opened().directions().stream().map(Directions::lightenerId).toList();
        if (!known.contains(lightenerId))
            return Optional.of(Decision.refuse(
                    "PRODUCT_UNKNOWN",
                    "\"" + lightenerId + "\" is no lightener of this day. Accepted: " + BookingRules.listed(known)
                            + "."));
        if (on.isAfter(day.opened().date()))
            return Optional.of(Decision.refuse(
                    "TEST_NOT_DONE",
                    "A test is recorded once it is done. Accepted: a date up to "
                            + day.opened().date() + "."));
        return Optional.empty();
    }

    /** The records of swatches and strips know their own ranges and say them. */
    private static Optional<Decision> range(Runnable made, String code) {
        try {
            made.run();
            return Optional.empty();
        } catch (IllegalArgumentException outside) {
            return Optional.of(Decision.refuse(code, "Not accepted: " + outside.getMessage() + "."));
        }
    }
}
