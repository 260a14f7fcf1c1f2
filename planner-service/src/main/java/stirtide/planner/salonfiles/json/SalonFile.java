package stirtide.planner.salonfiles.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.events.setup.AllowancePolicy;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.events.setup.Scale;

/**
 * {@code salon.json}: a salon with the weekly shifts of its people, which become hours once the date is known.
 *
 * @param people everybody with shifts
 * @param allowances how generous allowances are, empty for the usual
 */
public record SalonFile(
        String salonId,
        String name,
        String zone,
        String currency,
        int chairs,
        int handOverMinutes,
        int washMinutes,
        Optional<Boolean> oneMixTwoBowls,
        Optional<Boolean> mixerCarries,
        List<WeeklyPerson> people,
        List<Scale> scales,
        List<BowlSize> bowls,
        Optional<AllowanceSection> allowances) {

    static final String END_OF_DAY = "24:00";
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** A person with the shifts of a week. */
    public record WeeklyPerson(String personId, String name, Person.Role role, List<Shift> shifts) {}

    /**
     * A shift; its times are local to the salon, and it ends on the day it starts.
     *
     * @param days weekdays, {@code "mon"} to {@code "sun"}
     * @param from time such as {@code "09:00"}
     * @param to time such as {@code "18:00"}, at most {@code "24:00"}
     * @param breaks breaks inside the shift, may be empty
     */
    public record Shift(
            List<String> days,
            String from,
            String to,
            @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Break> breaks) {}

    /** A break in a shift. */
    public record Break(String from, String to) {}

    /** How generous allowances are; what is empty is as in {@link AllowancePolicy#USUAL}. */
    public record AllowanceSection(
            Optional<Integer> enoughPermille,
            Optional<BigDecimal> waitingMinutePrice,
            Optional<Integer> shortMilligrams,
            Optional<Integer> halfLifeDays) {
        static AllowanceSection of(AllowancePolicy policy) {
            return new AllowanceSection(
                    policy.fixedPermille(),
                    policy.waitingMinutePrice(),
                    Optional.of(policy.shortMilligrams()),
                    Optional.of(policy.halfLifeDays()));
        }

        AllowancePolicy policy() {
            return new AllowancePolicy(
                    enoughPermille,
                    waitingMinutePrice,
                    shortMilligrams.orElse(AllowancePolicy.USUAL.shortMilligrams()),
                    halfLifeDays.orElse(AllowancePolicy.USUAL.halfLifeDays()));
        }
    }

    /** The salon of a setup. The hours of its people are those of one day and become shifts on its weekday. */
    public static SalonFile of(DaySetup setup) {
        Salon salon = setup.salon();
        ZoneId zone = ZoneId.of(salon.zone());
        return new SalonFile(
                salon.salonId(),
                salon.name(),
                salon.zone(),
                salon.currency(),
                salon.chairs(),
                salon.handOverMinutes(),
                salon.washMinutes(),
                salon.oneMixTwoBowls(),
                salon.mixerCarries(),
                salon.people().stream()
                        .map(person -> weekly(person, setup.date(), zone))
                        .toList(),
                salon.scales(),
                salon.bowls(),
                setup.allowances().map(AllowanceSection::of));
    }

    /** A person whose shifts are the hours of one date. */
    private static WeeklyPerson weekly(Person person, LocalDate date, ZoneId zone) {
        List<Shift> shifts = person.onDuty().stream()
                .map(span -> new Shift(
                        List.of(weekday(date)),
                        CLOCK.format(minute(span.from(), zone)),
                        end(minute(span.to(), zone), date),
                        List.of()))
                .toList();
        return new WeeklyPerson(person.personId(), person.name(), person.role(), shifts);
    }

    private static ZonedDateTime minute(Instant at, ZoneId zone) {
        return at.atZone(zone).truncatedTo(ChronoUnit.MINUTES);
    }

    private static String end(ZonedDateTime at, LocalDate date) {
        boolean midnight =
                at.toLocalTime().equals(LocalTime.MIDNIGHT) && at.toLocalDate().isAfter(date);
        return midnight ? END_OF_DAY : CLOCK.format(at);
    }

    /** A weekday as the file writes it, {@code "mon"} to {@code "sun"}. */
    static String weekday(LocalDate date) {
        return date.getDayOfWeek().name().substring(0, 3).toLowerCase(Locale.ROOT);
    }

    /** The salon as it is on a date, with the people at work on it. */
    public Salon on(List<Person> atWork) {
        return new Salon(
                salonId,
                name,
                zone,
                currency,
                chairs,
                handOverMinutes,
                washMinutes,
                atWork,
                scales,
                bowls,
                oneMixTwoBowls,
                mixerCarries);
    }

    /** How generous allowances are, empty for the usual. */
    public Optional<AllowancePolicy> allowancePolicy() {
        return allowances.map(AllowanceSection::policy);
    }
}
