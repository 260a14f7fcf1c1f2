package stirtide.planner.salonfiles.rules;

import java.util.List;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.AccuracyClass;
import stirtide.planner.salonfiles.json.FieldPath;
import stirtide.planner.salonfiles.json.FieldPath.Located;
import stirtide.planner.salonfiles.json.FieldText;

/** Rules of a scale. Limits of the classes after OIML R 76-1, Table 3. */
final class ScaleRules {
    private ScaleRules() {}

    static void check(Scale scale, FieldPath at) {
        int smaller = scale.minimumMilligrams();
        for (Located<Scale.Range> each : at.each("ranges", scale.ranges())) {
            Scale.Range range = each.value();
            checkMaximum(range, scale.accuracyClass(), smaller, each.path().at("maximumGrams"));
            checkStep(range.divisionMilligrams(), each.path().at("divisionGrams"));
            if (range.divisionMilligrams() > range.verificationMilligrams())
                each.path()
                        .refuse(
                                "divisionGrams",
                                FieldText.thousandths(range.divisionMilligrams()),
                                "at most the verification interval of "
                                        + FieldText.thousandths(range.verificationMilligrams()) + " g");
            checkStep(range.verificationMilligrams(), each.path().at("verificationGrams"));
            smaller = range.maximumMilligrams();
        }
    }

    private static void checkMaximum(Scale.Range range, AccuracyClass accuracy, int smaller, FieldPath at) {
        long most = switch (accuracy) {
            case I -> Integer.MAX_VALUE;
            case II -> 100_000;
            case III -> 10_000;
            case IIII -> 1_000;
        };
        if (range.maximumMilligrams() > most * range.verificationMilligrams())
            at.refuse(
                    FieldText.thousandths(range.maximumMilligrams()),
                    "at most " + most + " verification intervals, as class " + accuracy
                            + " permits (OIML R 76-1, Table 3)");
        if (range.maximumMilligrams() <= smaller)
            at.refuse(
                    FieldText.thousandths(range.maximumMilligrams()),
                    "more than the minimum load and the maximum of the range before it");
    }

    private static void checkStep(int milligrams, FieldPath at) {
        int step = milligrams;
        while (step > 0 && step % 10 == 0) step /= 10;
        if (!List.of(1, 2, 5).contains(step))
            at.refuse(
                    FieldText.thousandths(milligrams),
                    "1, 2 or 5 times a power of ten in grams, such as 0.1, 0.2 or 0.5");
    }
}
