package stirtide.planner.salonfiles.json;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.events.setup.Person;
import stirtide.events.setup.Span;
import stirtide.planner.salonfiles.json.FieldPath.Located;
import stirtide.planner.salonfiles.json.SalonFile.Break;
import stirtide.planner.salonfiles.json.SalonFile.Shift;
import stirtide.planner.salonfiles.json.SalonFile.WeeklyPerson;
import stirtide.planner.salonfiles.source.LocalTimes;

/** Turns weekly shifts into the hours of a date, and the hours of a date into shifts. */
public final class WorkHours {
    private static final int MINUTES_A_DAY = 24 * 60;

    private WorkHours() {}

    /** Everybody with hours on the date, in the order of the file; hours that a clock change makes unclear are refused. */
    public static List<Person> atWork(List<WeeklyPerson> people, LocalDate date, ZoneId zone, FieldPath salon) {
        List<Person> atWork = new ArrayList<>();
        for (Located<WeeklyPerson> person : salon.each("people", people)) {
            List<Span> hours = new ArrayList<>();
            for (Located<Shift> shift : shiftsOn(person, SalonFile.weekday(date)))
                hours.addAll(hours(shift, date, zone));
            if (hours.isEmpty()) continue;
            WeeklyPerson who = person.value();
            atWork.add(new Person(who.personId(), who.name(), who.role(), joined(hours)));
        }
        return atWork;
    }

    /** Shifts of a person on a weekday, {@code "mon"} to {@code "sun"}, by start. */
    public static List<Located<Shift>> shiftsOn(Located<WeeklyPerson> person, String day) {
        return person.path().each("shifts", person.value().shifts()).stream()
                .filter(shift -> shift.value().days().contains(day))
                .sorted(Comparator.comparingInt(shift -> minute(shift.value().from())))
                .toList();
    }

    /** Breaks of a shift by start. */
    public static List<Located<Break>> breaksOf(Located<Shift> shift) {
        return shift.path().each("breaks", shift.value().breaks()).stream()
                .sorted(Comparator.comparingInt(each -> minute(each.value().from())))
                .toList();
    }

    /** The minute of the day of a local time, 0 to 1440. */
    public static int minute(String clock) {
        return clock.equals(SalonFile.END_OF_DAY)
                ? MINUTES_A_DAY
                : LocalTime.parse(clock).toSecondOfDay() / 60;
    }

    private static List<Span> hours(Located<Shift> shift, LocalDate date, ZoneId zone) {
        List<Span> hours = new ArrayList<>();
        Optional<Instant> from = instant(shift.value().from(), shift.path().at("from"), date, zone);
        for (Located<Break> each : breaksOf(shift)) {
            addIfLong(hours, from, instant(each.value().from(), each.path().at("from"), date, zone));
            from = instant(each.value().to(), each.path().at("to"), date, zone);
        }
        addIfLong(hours, from, instant(shift.value().to(), shift.path().at("to"), date, zone));
        return hours;
    }

    private static void addIfLong(List<Span> hours, Optional<Instant> from, Optional<Instant> to) {
        if (from.isPresent() && to.isPresent() && from.get().isBefore(to.get()))
            hours.add(new Span(from.get(), to.get()));
    }

    private static List<Span> joined(List<Span> hours) {
        List<Span> joined = new ArrayList<>();
        for (Span next : hours) {
            int last = joined.size() - 1;
            if (last >= 0 && joined.get(last).to().equals(next.from()))
                joined.set(last, new Span(joined.get(last).from(), next.to()));
            else joined.add(next);
        }
        return joined;
    }

    private static Optional<Instant> instant(String clock, FieldPath path, LocalDate date, ZoneId zone) {
        LocalDateTime local = date.atStartOfDay().plusMinutes(minute(clock));
        LocalTimes.Meaning meaning = LocalTimes.meaning(local, zone.getRules());
        if (meaning instanceof LocalTimes.Meaning.One one) return Optional.of(one.instant());
        if (meaning instanceof LocalTimes.Meaning.Unclear unclear)
            path.refuse(FieldText.quoted(clock) + " on " + date, unclear.acceptedLocally());
        return Optional.empty();
    }
}
