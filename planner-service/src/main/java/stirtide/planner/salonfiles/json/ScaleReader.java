package stirtide.planner.salonfiles.json;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.AccuracyClass;

/** Reads a scale of the bar. Limits of the classes after OIML R 76-1, Table 3. */
final class ScaleReader {
    private ScaleReader() {}

    static Scale read(LocatedValue item) {
        AccuracyClass accuracy = AccuracyClass.valueOf(item.text("accuracyClass"));
        List<Scale.Range> ranges = new ArrayList<>();
        int smaller = item.thousandths("minimumGrams");
        for (LocatedValue each : item.items("ranges")) {
            Scale.Range range = range(each, accuracy);
            if (range.maximumMilligrams() <= smaller) {
                each.at("maximumGrams").refuse("more than the minimum load and the maximum of the range before it");
            }
            smaller = range.maximumMilligrams();
            ranges.add(range);
        }
        return new Scale(
                item.text("scaleId"),
                accuracy,
                item.text("limits").equals("in service"),
                Scale.Weighing.valueOf(item.text("weighing").replace(' ', '_').toUpperCase(Locale.ROOT)),
                item.thousandths("minimumGrams"),
                ranges);
    }

    private static Scale.Range range(LocatedValue item, AccuracyClass accuracy) {
        int maximum = item.thousandths("maximumGrams");
        int division = item.thousandths("divisionGrams");
        int verification = item.thousandths("verificationGrams");
        for (String key : List.of("divisionGrams", "verificationGrams")) {
            if (!isStep(item.thousandths(key))) {
                item.at(key).refuse("1, 2 or 5 times a power of ten in grams, such as 0.1, 0.2 or 0.5");
            }
        }
        if (division > verification) {
            item.at("divisionGrams")
                    .refuse("at most the verification interval of "
                            + item.at("verificationGrams").shown() + " g");
        }
        long most = mostIntervals(accuracy);
        if (maximum > most * verification) {
            item.at("maximumGrams")
                    .refuse("at most " + most + " verification intervals, as class " + accuracy
                            + " permits (OIML R 76-1, Table 3)");
        }
        return new Scale.Range(maximum, division, verification);
    }

    private static boolean isStep(int milligrams) {
        BigInteger step = BigInteger.valueOf(milligrams);
        while (step.signum() > 0 && step.mod(BigInteger.TEN).signum() == 0) step = step.divide(BigInteger.TEN);
        return List.of(1, 2, 5).contains(step.intValue());
    }

    private static long mostIntervals(AccuracyClass accuracy) {
        return switch (accuracy) {
            case I -> Integer.MAX_VALUE;
            case II -> 100_000;
            case III -> 10_000;
            case IIII -> 1_000;
        };
    }
}
