package stirtide.planner.salonfiles.calendar;

import biweekly.util.ByDay;
import biweekly.util.Recurrence;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Finds parts of a repetition rule that no calendar can follow. The library takes any number and then fails inside, or
 * follows a rule that was not written. Ranges: RFC 5545, section 3.3.10.
 */
final class RuleParts {
    /** The library steps through every day in between; longer ones would keep a processor busy for minutes. */
    private static final int LONGEST_INTERVAL = 9_999;

    /**
     * A part that cannot be.
     *
     * @param written the part as written, such as BYMONTH=13
     * @param accepted what would be accepted
     */
    record Impossible(String written, String accepted) {}

    private RuleParts() {}

    /** The first part that cannot be followed, or empty. */
    static Optional<Impossible> impossible(Recurrence rule) {
        List<Integer> weekdays = rule.getByDay().stream()
                .map(ByDay::getNum)
                .filter(Objects::nonNull)
                .toList();
        return Stream.of(
                        from("INTERVAL", optional(rule.getInterval()), 1, LONGEST_INTERVAL, false),
                        from("COUNT", optional(rule.getCount()), 1, Integer.MAX_VALUE, false),
                        from("BYSECOND", rule.getBySecond(), 0, 60, false),
                        from("BYMINUTE", rule.getByMinute(), 0, 59, false),
                        from("BYHOUR", rule.getByHour(), 0, 23, false),
                        from("BYDAY", weekdays, 1, 53, true),
                        from("BYMONTHDAY", rule.getByMonthDay(), 1, 31, true),
                        from("BYYEARDAY", rule.getByYearDay(), 1, 366, true),
                        from("BYWEEKNO", rule.getByWeekNo(), 1, 53, true),
                        from("BYMONTH", rule.getByMonth(), 1, 12, false),
                        from("BYSETPOS", rule.getBySetPos(), 1, 366, true))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static List<Integer> optional(@Nullable Integer number) {
        return number == null ? List.of() : List.of(number);
    }

    private static Optional<Impossible> from(String part, List<Integer> numbers, int least, int most, boolean signed) {
        String range = most == Integer.MAX_VALUE ? " of " + least + " or more" : " from " + least + " to " + most;
        String accepted = part + range + (signed ? ", or from -" + most + " to -" + least : "");
        return numbers.stream()
                .filter(each -> {
                    long size = signed ? Math.abs((long) each) : each;
                    return size < least || size > most;
                })
                .findFirst()
                .map(each -> new Impossible(part + "=" + each, accepted));
    }
}
