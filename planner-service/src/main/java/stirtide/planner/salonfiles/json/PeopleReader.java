package stirtide.planner.salonfiles.json;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.events.setup.Person;
import stirtide.events.setup.Span;
import stirtide.planner.salonfiles.source.LocalTimes;

/** Reads people and turns their weekly shifts into hours on a date. */
final class PeopleReader {
    private static final int MINUTES_A_DAY = 24 * 60;

    private PeopleReader() {}

    /** Reports shifts and breaks that cannot be, whatever the date. */
    static void check(LocatedValue person) {
        for (String day : List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun")) {
            List<LocatedValue> shifts = shiftsOn(person, day);
            for (int i = 1; i < shifts.size(); i++) {
                if (minute(shifts.get(i), "from") < minute(shifts.get(i - 1), "to")) {
                    shifts.get(i)
                            .at("from")
                            .refuse("a time after the other shift of that person on " + day + " ends, "
                                    + shifts.get(i - 1).at("to").shown());
                }
            }
        }
        person.items("shifts").forEach(PeopleReader::checkShift);
    }

    private static void checkShift(LocatedValue shift) {
        int from = minute(shift, "from");
        int to = minute(shift, "to");
        if (to <= from) {
            shift.at("to").refuse("a time after " + shift.at("from").shown() + "; a shift ends on the day it starts");
            return;
        }
        int free = from;
        for (LocatedValue each : byStart(shift.items("breaks"))) {
            int start = minute(each, "from");
            int end = minute(each, "to");
            if (end <= start)
                each.at("to").refuse("a time after " + each.at("from").shown());
            else if (start < from || end > to) {
                each.refuse("a break inside its shift, " + shift.at("from").shown() + " to "
                        + shift.at("to").shown());
            } else if (start < free) each.refuse("a break that begins after the one before it ends");
            free = Math.max(free, end);
        }
    }

    /** Everybody with hours on the date, in the order of the file. */
    static List<Person> atWork(List<LocatedValue> people, LocalDate date, ZoneId zone) {
        String day = date.getDayOfWeek().name().substring(0, 3).toLowerCase(Locale.ROOT);
        List<Person> atWork = new ArrayList<>();
        for (LocatedValue person : people) {
            List<Span> hours = new ArrayList<>();
            for (LocatedValue shift : shiftsOn(person, day)) hours.addAll(hours(shift, date, zone));
            if (hours.isEmpty()) continue;
            Person.Role role = Person.Role.valueOf(person.text("role").toUpperCase(Locale.ROOT));
            atWork.add(new Person(person.text("personId"), person.text("name"), role, joined(hours)));
        }
        return atWork;
    }

    private static List<Span> hours(LocatedValue shift, LocalDate date, ZoneId zone) {
        List<Span> hours = new ArrayList<>();
        Optional<Instant> from = instant(shift, "from", date, zone);
        for (LocatedValue each : byStart(shift.items("breaks"))) {
            addIfLong(hours, from, instant(each, "from", date, zone));
            from = instant(each, "to", date, zone);
        }
        addIfLong(hours, from, instant(shift, "to", date, zone));
        return hours;
    }

    private static void addIfLong(List<Span> hours, Optional<Instant> from, Optional<Instant> to) {
        if (from.isPresent() && to.isPresent() && from.get().isBefore(to.get())) {
            hours.add(new Span(from.get(), to.get()));
        }
    }

    private static List<Span> joined(List<Span> hours) {
        List<Span> joined = new ArrayList<>();
        for (Span next : hours) {
            int last = joined.size() - 1;
            if (last >= 0 && joined.get(last).to().equals(next.from())) {
                joined.set(last, new Span(joined.get(last).from(), next.to()));
            } else {
                joined.add(next);
            }
        }
        return joined;
    }

    private static Optional<Instant> instant(LocatedValue owner, String key, LocalDate date, ZoneId zone) {
        LocalDateTime local = date.atStartOfDay().plusMinutes(minute(owner, key));
        LocalTimes.Meaning meaning = LocalTimes.meaning(local, zone.getRules());
        if (meaning instanceof LocalTimes.Meaning.One one) return Optional.of(one.instant());
        if (meaning instanceof LocalTimes.Meaning.Unclear unclear) {
            owner.at(key).refuse(owner.at(key).shown() + " on " + date, unclear.acceptedLocally());
        }
        return Optional.empty();
    }

    private static List<LocatedValue> shiftsOn(LocatedValue person, String day) {
        return byStart(person.items("shifts").stream()
                .filter(shift -> shift.items("days").stream()
                        .anyMatch(each -> each.node().textValue().equals(day)))
                .toList());
    }

    private static List<LocatedValue> byStart(List<LocatedValue> spans) {
        return spans.stream()
                .sorted(Comparator.comparingInt(span -> minute(span, "from")))
                .toList();
    }

    private static int minute(LocatedValue owner, String key) {
        String text = owner.text(key);
        return text.equals("24:00") ? MINUTES_A_DAY : LocalTime.parse(text).toSecondOfDay() / 60;
    }
}
