package stirtide.planner.salonfiles.calendar;

import biweekly.property.RecurrenceRule;
import biweekly.util.Frequency;
import biweekly.util.ICalDate;
import biweekly.util.Recurrence;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import stirtide.planner.salonfiles.source.LocalTimes;

/** The times at which an event with RRULE or RDATE takes place, its EXDATE taken off. */
record EventRecurrence(LocatedEvent event, CalendarZones zones, LocalDateTime first, ZoneRules rules) {
    private static final Set<Frequency> FREQUENCIES =
            Set.of(Frequency.DAILY, Frequency.WEEKLY, Frequency.MONTHLY, Frequency.YEARLY);
    private static final int FIRST_YEAR = 1970;

    /** Local times from the day before a date to the day after it, sorted. */
    List<LocalDateTime> around(LocalDate date) {
        Set<LocalDateTime> all = new TreeSet<>();
        all.add(first);
        all.addAll(ruled(date));
        List<ICalDate> added = event.event().getRecurrenceDates().stream()
                .flatMap(each -> Stream.concat(
                        each.getDates().stream(), each.getPeriods().stream().map(period -> period.getStartDate())))
                .toList();
        for (Instant instant : instants("RDATE", near(added, date))) {
            all.add(LocalDateTime.ofInstant(instant, rules.getOffset(instant)));
        }
        all.removeIf(local -> local.isBefore(date.minusDays(1).atStartOfDay())
                || !local.isBefore(date.plusDays(2).atStartOfDay()));
        if (all.isEmpty()) return List.of();
        Set<Instant> excluded = new HashSet<>();
        Set<LocalDate> excludedDates = new HashSet<>();
        exclude(date, excluded, excludedDates);
        return all.stream()
                .filter(local -> !excluded.contains(LocalTimes.near(local, rules)))
                .filter(local -> !excludedDates.contains(local.toLocalDate()))
                .toList();
    }

    /** Dates that may lie on a day in some zone, and those nobody can read. */
    private static List<ICalDate> near(List<ICalDate> dates, LocalDate day) {
        return dates.stream().filter(each -> CalendarTimes.maybeOn(each, day)).toList();
    }

    private void exclude(LocalDate day, Set<Instant> instants, Set<LocalDate> dates) {
        List<ICalDate> all = event.event().getExceptionDates().stream()
                .flatMap(each -> each.getValues().stream())
                .toList();
        instants.addAll(instants("EXDATE", near(all, day)));
        all.stream()
                .filter(each -> !each.hasTime() && each.getRawComponents() != null)
                .forEach(each -> dates.add(CalendarTimes.local(each).toLocalDate()));
    }

    private List<LocalDateTime> ruled(LocalDate date) {
        List<RecurrenceRule> ruleList = event.event().getProperties(RecurrenceRule.class);
        if (ruleList.isEmpty()) return List.of();
        Recurrence rule = ruleList.get(0).getValue();
        if (ruleList.size() > 1 || !event.lines().named("EXRULE").isEmpty()) {
            return refused("more than one rule", "one RRULE and no EXRULE");
        }
        if (rule == null || rule.getFrequency() == null || !FREQUENCIES.contains(rule.getFrequency())) {
            return refused(
                    "FREQ=" + (rule == null || rule.getFrequency() == null ? "" : rule.getFrequency()),
                    "FREQ=DAILY, WEEKLY, MONTHLY or YEARLY");
        }
        if (first.getYear() < FIRST_YEAR) {
            return refused("a rule that starts in " + first.getYear(), "a start in " + FIRST_YEAR + " or later");
        }
        Optional<RuleParts.Impossible> impossible = RuleParts.impossible(rule);
        if (impossible.isPresent()) {
            return refused(impossible.get().written(), impossible.get().accepted());
        }
        try {
            LocalDateTime from = date.minusDays(1).atStartOfDay();
            return RecurrenceTimes.times(
                    rule, first, rules, from, date.plusDays(2).atStartOfDay());
        } catch (IllegalArgumentException | IllegalStateException | DateTimeException notFollowed) {
            return refused(
                    "a rule that cannot be followed, or that takes place more than " + RecurrenceTimes.MOST_TIMES
                            + " times in three days",
                    "a rule such as FREQ=WEEKLY;BYDAY=FR;COUNT=10");
        }
    }

    private List<LocalDateTime> refused(String value, String accepted) {
        event.refuse("RRULE", value, accepted);
        return List.of();
    }

    /** The dates of a property with time, as instants. All lines of the property must be in one zone. */
    private List<Instant> instants(String name, List<ICalDate> dates) {
        List<Instant> instants = new ArrayList<>();
        if (dates.isEmpty()) return instants;
        List<ContentLines.Property> lines = event.lines().named(name);
        if (lines.stream().map(ContentLines.Property::zone).distinct().count() > 1) {
            event.refuse(name, name + " in several zones", "one zone for all lines of " + name);
            return instants;
        }
        for (ICalDate date : dates) instant(name, lines, date).ifPresent(instants::add);
        return instants;
    }

    private Optional<Instant> instant(String name, List<ContentLines.Property> lines, ICalDate date) {
        try {
            LocalDateTime local = CalendarTimes.local(date);
            if (CalendarTimes.utc(date)) return Optional.of(local.toInstant(ZoneOffset.UTC));
            if (!date.hasTime() && name.equals("EXDATE")) return Optional.empty();
            LocalDateTime timed = date.hasTime() ? local : local.toLocalDate().atTime(first.toLocalTime());
            return zones.rules(event, lines.get(0), timed).map(zone -> LocalTimes.near(timed, zone));
        } catch (DateTimeException noSuchTime) {
            event.refuse(name, CalendarTimes.written(date), "a date and time of the calendar, such as 20270514T093000");
            return Optional.empty();
        }
    }
}
