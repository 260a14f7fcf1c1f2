package stirtide.planner.salonfiles.calendar;

import biweekly.component.Observance;
import biweekly.component.VTimezone;
import biweekly.util.ICalDate;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Turns the zone a calendar describes (VTIMEZONE) into rules. */
final class VtimezoneRules {
    private static final int MILLIS = 1000;

    /** A change of offset: at a local time in the offset before it. */
    private record Onset(LocalDateTime local, ZoneOffset before, ZoneOffset after) {
        long second() {
            return local.toEpochSecond(before);
        }
    }

    private VtimezoneRules() {}

    /** Rules that hold up to the year after a date; empty when the description is not complete. */
    static Optional<ZoneRules> of(VTimezone zone, LocalDate until) {
        try {
            List<Onset> onsets = new ArrayList<>();
            Stream.concat(zone.getStandardTimes().stream(), zone.getDaylightSavingsTime().stream())
                    .forEach(each -> onsets.addAll(onsets(each, until.plusYears(1))));
            if (onsets.isEmpty()) return Optional.empty();
            onsets.sort(Comparator.comparingLong(Onset::second));
            return Optional.of(rules(onsets));
        } catch (DateTimeException | IllegalArgumentException notComplete) {
            return Optional.empty();
        }
    }

    private static ZoneRules rules(List<Onset> onsets) {
        ZoneOffset base = onsets.get(0).before();
        ZoneOffset current = base;
        List<ZoneOffsetTransition> changes = new ArrayList<>();
        for (Onset onset : onsets) {
            if (onset.after().equals(current)) continue;
            LocalDateTime local = LocalDateTime.ofEpochSecond(onset.second(), 0, current);
            changes.add(ZoneOffsetTransition.of(local, current, onset.after()));
            current = onset.after();
        }
        return ZoneRules.of(base, base, List.of(), changes, List.of());
    }

    private static List<Onset> onsets(Observance observance, LocalDate until) {
        if (observance.getDateStart() == null
                || observance.getTimezoneOffsetFrom() == null
                || observance.getTimezoneOffsetTo() == null) {
            throw new IllegalArgumentException("an observance without start or offsets");
        }
        ZoneOffset before = offset(observance.getTimezoneOffsetFrom().getValue().getMillis());
        ZoneOffset after = offset(observance.getTimezoneOffsetTo().getValue().getMillis());
        LocalDateTime first = CalendarTimes.local(observance.getDateStart().getValue());
        List<LocalDateTime> locals = new ArrayList<>();
        locals.add(first);
        if (observance.getRecurrenceRule() != null) {
            locals.addAll(RecurrenceTimes.times(
                    observance.getRecurrenceRule().getValue(), first, before.getRules(), first, until.atStartOfDay()));
        }
        observance.getRecurrenceDates().stream()
                .flatMap(dates -> dates.getDates().stream())
                .map((ICalDate date) -> CalendarTimes.local(date))
                .forEach(locals::add);
        return locals.stream()
                .distinct()
                .map(local -> new Onset(local, before, after))
                .toList();
    }

    private static ZoneOffset offset(long millis) {
        return ZoneOffset.ofTotalSeconds((int) (millis / MILLIS));
    }
}
