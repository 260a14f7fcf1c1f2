package stirtide.planner.salonfiles.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import stirtide.mixing.strength.LegalLimits;
import stirtide.mixing.text.AmountText;
import stirtide.planner.salonfiles.json.FieldPath;
import stirtide.planner.salonfiles.json.FieldText;
import stirtide.planner.salonfiles.source.FileProblem;

/** Checks of single fields, in the words of the schemas. Remembers whether all of them held. */
final class FieldChecks {
    private static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");
    private static final Pattern WORD = Pattern.compile("[a-z][a-z -]{0,23}");
    private static final Pattern PRICE = Pattern.compile("(0|[1-9][0-9]{0,6})(\\.[0-9]{1,3})?");
    private static final int HIGHEST_RATIO_THOUSANDTHS = 99_999;
    private static final int THOUSANDTHS = 1000;

    private boolean hold = true;

    /** Whether every check until now has held. */
    boolean hold() {
        return hold;
    }

    void id(String id, FieldPath at) {
        if (isPlain(id, at) && !ID.matcher(id).matches())
            refuse(FieldText.quoted(id), "a short id of small letters, digits and hyphens, at most 40 characters", at);
    }

    void name(String name, int longest, FieldPath at) {
        text(name, longest, "a name of 1 to " + longest + " characters", at);
    }

    /** A text that is not blank and has at most so many characters. */
    void text(String text, int longest, String accepted, FieldPath at) {
        if (isPlain(text, at)
                && (text.chars().allMatch(letter -> letter == ' ') || text.codePointCount(0, text.length()) > longest))
            refuse(FieldText.quoted(text), accepted, at);
    }

    void oneOf(List<String> words, String word, FieldPath at) {
        if (isPlain(word, at) && !words.contains(word))
            refuse(FieldText.quoted(word), "one of \"" + String.join("\", \"", words) + "\"", at);
    }

    private boolean isPlain(String text, FieldPath at) {
        boolean plain = text.codePoints().noneMatch(FileProblem::steers);
        if (!plain) refuse(text, "text without control characters", at);
        return plain;
    }

    void whole(int value, int least, int most, String accepted, FieldPath at) {
        if (value < least || value > most) refuse(String.valueOf(value), accepted, at);
    }

    void minutes(int minutes, int least, int most, FieldPath at) {
        whole(minutes, least, most, "whole minutes from " + least + " to " + most, at);
    }

    void hours(Optional<Integer> hours, FieldPath at) {
        hours.ifPresent(value -> whole(value, 1, 336, "whole hours from 1 to 336", at));
    }

    /** Grams above 0. */
    void grams(int milligrams, int mostGrams, FieldPath at) {
        thousandths(
                milligrams,
                1,
                mostGrams * THOUSANDTHS,
                "grams: more than 0, at most " + mostGrams + ", at most three decimals",
                at);
    }

    void gramsFrom0(int milligrams, int mostGrams, FieldPath at) {
        thousandths(
                milligrams, 0, mostGrams * THOUSANDTHS, "grams: 0 to " + mostGrams + ", at most three decimals", at);
    }

    void thousandths(int value, int least, int most, String accepted, FieldPath at) {
        if (value < least || value > most) refuse(FieldText.thousandths(value), accepted, at);
    }

    void strength(int hundredths, FieldPath at) {
        if (hundredths < 1 || hundredths > LegalLimits.ON_HAIR_HUNDREDTHS)
            refuse(
                    FieldText.hundredths(hundredths),
                    "hydrogen peroxide in per cent by weight: more than 0, at most 12 (40 vol), at most two decimals",
                    at);
    }

    void ratio(int thousandths, FieldPath at) {
        if (thousandths < 0 || thousandths > HIGHEST_RATIO_THOUSANDTHS)
            refuse(
                    FieldText.quoted(AmountText.ratio(thousandths)),
                    "a ratio by weight, lightener first and always 1, such as \"1:1.5\", at most three decimals,"
                            + " no unit",
                    at);
    }

    void price(String price, FieldPath at) {
        if (!PRICE.matcher(price).matches())
            refuse(
                    FieldText.quoted(price),
                    "a price as text with a decimal point and no currency sign, such as \"24.50\"",
                    at);
    }

    void factors(Map<String, Integer> factors, FieldPath at) {
        if (factors.isEmpty() || factors.size() > 12)
            refuse(
                    "an object of " + factors.size(),
                    "an object of factors, such as {\"medium\": 1, \"long\": 1.35}",
                    at);
        factors.forEach((word, permille) -> {
            if (!WORD.matcher(word).matches())
                refuse(
                        FieldText.quoted(word),
                        "a word of small letters, such as \"long\", at most 24 characters",
                        at.at(word));
            thousandths(permille, 100, 5000, "a factor from 0.1 to 5, at most three decimals", at.at(word));
        });
    }

    void size(List<?> list, int least, int most, String accepted, FieldPath at) {
        if (list.size() < least || list.size() > most) refuse("a list of " + list.size(), accepted, at);
    }

    private void refuse(String value, String accepted, FieldPath at) {
        hold = false;
        at.refuse(value, accepted);
    }
}
