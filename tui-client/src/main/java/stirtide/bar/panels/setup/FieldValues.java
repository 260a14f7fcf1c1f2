package stirtide.bar.panels.setup;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.setup.Span;

/** What the contents of setup fields mean. A content is only read once its field has accepted it. */
final class FieldValues {
    private FieldValues() {}

    static int milligrams(String grams) {
        return scaled(grams, 3);
    }

    static int hundredths(String percent) {
        return scaled(percent, 2);
    }

    static int tenths(String number) {
        return scaled(number, 1);
    }

    static int thousandths(String ratio) {
        return scaled(ratio.substring(2), 3);
    }

    private static int scaled(String number, int decimals) {
        return new BigDecimal(number.replace(',', '.')).movePointRight(decimals).intValueExact();
    }

    static BigDecimal money(String price) {
        return new BigDecimal(price.replace(',', '.'));
    }

    static Optional<Integer> number(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(Integer.valueOf(text));
    }

    /** Hours on a day, empty when one of them ends before it begins. */
    static Optional<List<Span>> spans(String hours, LocalDate date, ZoneId zone) {
        var spans = new ArrayList<Span>();
        for (String one : hours.strip().split(" +")) {
            if (one.isEmpty()) continue;
            String to = one.substring(6);
            var from = date.atTime(LocalTime.parse(one.substring(0, 5)))
                    .atZone(zone)
                    .toInstant();
            var end = to.equals("24:00")
                    ? date.plusDays(1).atStartOfDay(zone).toInstant()
                    : date.atTime(LocalTime.parse(to)).atZone(zone).toInstant();
            if (!from.isBefore(end)) return Optional.empty();
            spans.add(new Span(from, end));
        }
        return Optional.of(spans);
    }

    static SortedMap<String, Integer> permille(String factors) {
        var map = new TreeMap<String, Integer>();
        for (String one : factors.strip().split(" *, *")) {
            int blank = one.lastIndexOf(' ');
            map.put(one.substring(0, blank).strip(), scaled(one.substring(blank + 1), 3));
        }
        return map;
    }
}
