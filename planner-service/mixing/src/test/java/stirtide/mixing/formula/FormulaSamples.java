package stirtide.mixing.formula;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.AccuracyClass;
import stirtide.events.setup.Scale.Range;
import stirtide.events.setup.Scale.Weighing;

/** Invented products and scales for the tests of this package. */
public final class FormulaSamples {
    private FormulaSamples() {}

    static Directions directions(int lowestRatio, int highestRatio, int highestStrength, boolean water) {
        return new Directions(
                "pale-clay",
                "Pale Clay",
                "clay",
                40,
                3,
                water,
                List.of(new TechniqueRule("foil", false, lowestRatio, highestRatio, highestStrength, 45)),
                500_000,
                new BigDecimal("24.00"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    static Developer developer(int strengthHundredths) {
        return counted(strengthHundredths, Optional.empty());
    }

    static Developer counted(int strengthHundredths, Optional<Integer> milligrams) {
        return new Developer(
                "dev-" + strengthHundredths,
                "Developer " + strengthHundredths,
                strengthHundredths,
                1_000_000,
                new BigDecimal("9.00"),
                milligrams);
    }

    static List<Developer> shelf(int... strengths) {
        return java.util.Arrays.stream(strengths)
                .mapToObj(FormulaSamples::developer)
                .toList();
    }

    public static Scale scale(int division, boolean inService, Weighing weighing) {
        return new Scale(
                "bar-1",
                AccuracyClass.III,
                inService,
                weighing,
                0,
                List.of(new Range(6_000 * division, division, division)));
    }

    static FormulaQuestion question(Directions directions, int strength, int ratio, int need, int usable, Scale scale) {
        return new FormulaQuestion(
                directions, "foil", strength, ratio, shelf(300, 600, 900, 1200), need, 0, usable, scale);
    }
}
