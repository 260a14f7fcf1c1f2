package stirtide.bar.panels.setup;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import stirtide.bar.panels.form.ChoiceField;
import stirtide.bar.panels.form.FormField;
import stirtide.bar.panels.form.TextField;
import stirtide.mixing.text.AmountText;

/**
 * Fields of the setup forms. Most begin with a figure of the piece that is changed, or empty for a new piece.
 * {@link FieldValues} reads their contents.
 */
final class SetupFields {
    private static final String NUMBER = "\\d{1,7}([.,]\\d{1,3})?";
    private static final String HOURS = "([01]\\d|2[0-3]):[0-5]\\d-(([01]\\d|2[0-3]):[0-5]\\d|24:00)";
    private static final String FACTOR = "[a-z][a-z -]{0,22} \\d([.]\\d{1,3})?";
    private static final int LONGEST_LINE = 120;

    private SetupFields() {}

    private static <T> String first(Optional<T> known, ToIntFunction<T> figure, int decimals) {
        return known.map(one -> AmountText.number(figure.applyAsInt(one), decimals))
                .orElse("");
    }

    static <T> FormField name(Optional<T> known, Function<T, String> name) {
        return new TextField(
                "name",
                80,
                ".*\\S.*",
                "a name of 1 to 80 characters",
                known.map(name).orElse(""));
    }

    static <T> FormField choice(String label, List<String> choices, Optional<T> known, Function<T, String> choice) {
        return new ChoiceField(label, choices, known.map(choice).orElse(""));
    }

    static <T> FormField yesNo(String label, Optional<T> known, Predicate<T> yes) {
        return new ChoiceField(label, List.of("no", "yes"), known.filter(yes).isPresent() ? "yes" : "no");
    }

    static <T> FormField whole(String label, String what, Optional<T> known, ToIntFunction<T> figure) {
        return whole(label, what, first(known, figure, 0));
    }

    static FormField whole(String label, String what, String first) {
        String example = first.isEmpty() ? "5" : first;
        return new TextField(label, 4, "\\d{1,4}", "whole " + what + ", such as " + example, first);
    }

    static <T> FormField grams(String label, Optional<T> known, ToIntFunction<T> milligrams) {
        String accepted = "grams, such as 40 or 32.5, at most three decimals";
        return new TextField(label, 10, NUMBER, accepted, first(known, milligrams, 3));
    }

    static FormField grams(String label) {
        return grams(label, Optional.<Integer>empty(), Integer::intValue);
    }

    static <T> FormField percent(String label, Optional<T> known, ToIntFunction<T> hundredths) {
        String accepted = "per cent by weight, such as 6 (20 vol) or 4.5";
        return new TextField(label, 5, "\\d{1,2}([.,]\\d{1,2})?", accepted, first(known, hundredths, 2));
    }

    static FormField percent(String label) {
        return percent(label, Optional.<Integer>empty(), Integer::intValue);
    }

    static <T> FormField ratio(String label, Optional<T> known, ToIntFunction<T> thousandths) {
        String first = first(known, thousandths, 3);
        return ratio(label, "1:" + first);
    }

    static FormField ratio(String label, String first) {
        String accepted = "a ratio by weight, lightener first, such as 1:2 or 1:1.5; by volume is not accepted";
        return new TextField(label, 8, "1:\\d{1,2}([.,]\\d{1,3})?", accepted, first);
    }

    static <T> FormField price(String currency, Optional<T> known, Function<T, BigDecimal> price) {
        String first = known.map(price).map(BigDecimal::toPlainString).orElse("");
        return new TextField(
                "price of a pack",
                11,
                "\\d{1,7}([.,]\\d{1,3})?",
                "an amount in " + currency + ", such as 24.50",
                first);
    }

    /** Hours before a service by which a test must be done: those that a salon's files may hold. */
    static FormField hoursBefore(String label, Optional<Integer> known) {
        String pattern = "([1-9]\\d?|[12]\\d\\d|3[0-2]\\d|33[0-6])?";
        String accepted = "whole hours from 1 to 336, or nothing when none are demanded";
        return new TextField(
                label, 4, pattern, accepted, known.map(String::valueOf).orElse(""));
    }

    static FormField hours(String label, String first) {
        String accepted = "hours such as 08:30-12:30 13:00-17:00, or nothing for no hours";
        return new TextField(label, LONGEST_LINE, "(" + HOURS + "( +" + HOURS + "){0,5})?", accepted, first);
    }

    static FormField factors(String label, String first) {
        String accepted = "words with factors, such as short 0.75, medium 1, long 1.35";
        return new TextField(label, LONGEST_LINE, FACTOR + "( *, *" + FACTOR + "){0,11}", accepted, first);
    }
}
