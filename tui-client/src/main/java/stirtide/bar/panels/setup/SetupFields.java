package stirtide.bar.panels.setup;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.bar.panels.FormPanel.Spec;
import stirtide.events.setup.Span;

/** Fields of the forms and what their texts mean. A text is only read once its field has accepted it. */
final class SetupFields {
    private static final String NUMBER = "\\d{1,7}([.,]\\d{1,3})?";
    private static final String HOURS = "([01]\\d|2[0-3]):[0-5]\\d-(([01]\\d|2[0-3]):[0-5]\\d|24:00)";
    private static final String FACTOR = "[a-z][a-z -]{0,22} \\d([.]\\d{1,3})?";
    private static final int LONGEST_LINE = 120;

    private SetupFields() {}

    static Spec name(String label, String first) {
        return Spec.text(label, 80, ".*\\S.*", "a name of 1 to 80 characters", first);
    }

    static Spec grams(String label, String first) {
        return Spec.text(label, 10, NUMBER, "grams, such as 40 or 32.5, at most three decimals", first);
    }

    static Spec whole(String label, String what, String first) {
        return Spec.text(label, 4, "\\d{1,4}", "whole " + what + ", such as " + (first.isEmpty() ? "5" : first), first);
    }

    /** Hours before a service by which a test must be done: those that a salon's files may hold. */
    static Spec hoursBefore(String label, String first) {
        String pattern = "([1-9]\\d?|[12]\\d\\d|3[0-2]\\d|33[0-6])?";
        return Spec.text(label, 4, pattern, "whole hours from 1 to 336, or nothing when none are demanded", first);
    }

    static Spec percent(String label, String first) {
        return Spec.text(label, 5, "\\d{1,2}([.,]\\d{1,2})?", "per cent by weight, such as 6 (20 vol) or 4.5", first);
    }

    static Spec ratio(String label, String first) {
        return Spec.text(
                label,
                8,
                "1:\\d{1,2}([.,]\\d{1,3})?",
                "a ratio by weight, lightener first, such as 1:2 or 1:1.5; by volume is not accepted",
                first);
    }

    static Spec price(String label, String currency, String first) {
        return Spec.text(label, 11, "\\d{1,7}([.,]\\d{1,3})?", "an amount in " + currency + ", such as 24.50", first);
    }

    static Spec hours(String label, String first) {
        return Spec.text(
                label,
                LONGEST_LINE,
                "(" + HOURS + "( +" + HOURS + "){0,5})?",
                "hours such as 08:30-12:30 13:00-17:00, or nothing for nobody's hours",
                first);
    }

    static Spec factors(String label, String first) {
        return Spec.text(
                label,
                LONGEST_LINE,
                FACTOR + "( *, *" + FACTOR + "){0,11}",
                "words with factors, such as short 0.75, medium 1, long 1.35",
                first);
    }

    static Spec yesNo(String label, boolean first) {
        return Spec.choice(label, List.of("no", "yes"), first ? "yes" : "no");
    }

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

    /** An id made of a name that no other piece has: small letters, digits and hyphens. */
    static String id(String name, Collection<String> taken) {
        String plain =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        String base = plain.isEmpty() ? "one" : plain.substring(0, Math.min(32, plain.length()));
        String id = base;
        for (int i = 2; taken.contains(id); i++) id = base + "-" + i;
        return id;
    }
}
