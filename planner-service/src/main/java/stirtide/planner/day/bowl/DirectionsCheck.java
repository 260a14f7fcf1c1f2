package stirtide.planner.day.bowl;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Scale;
import stirtide.mixing.strength.LegalLimits;
import stirtide.mixing.text.AmountText;
import stirtide.mixing.weighing.ScaleErrors;
import stirtide.mixing.weighing.WeighedMix;
import stirtide.planner.day.booking.FormulaRun;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;

/** Whether the directions permit what was weighed. */
public final class DirectionsCheck {
    private DirectionsCheck() {}

    /**
     * Why the directions do not permit a mix, empty when they do. Exact: no rounding decides. The scale is taken to err as
     * far as it may, as in the formula and in what to pour next; a mix that might be outside is outside. One mix for two
     * bowls is judged as it was weighed, as a whole: dividing it changes grams, not the ratio.
     */
    public static Optional<String> complaint(
            Day day, BowlState bowl, int lightenerMilligrams, List<DeveloperPart> parts) {
        var directions = directions(day, bowl);
        var planned = bowl.planned();
        var bounds = new WeighedMix.Bounds(
                planned.lowestRatioThousandths(),
                planned.highestRatioThousandths(),
                strengthCeiling(day, bowl, directions));
        var liquids = parts.stream()
                .filter(part -> part.milligrams() > 0)
                .map(part ->
                        new WeighedMix.Part(day.opened().strengthHundredths(part.developerId()), part.milligrams()))
                .toList();
        var mix = new WeighedMix(new ScaleErrors(scale(day, bowl)), lightenerMilligrams, liquids);
        var fault = mix.fault(bounds);
        if (fault.isPresent()) return fault.map(found -> words(found, bounds, mix.isAsShown(found, bounds)));
        boolean water = parts.stream()
                .anyMatch(part -> part.developerId().equals(DeveloperPart.WATER) && part.milligrams() > 0);
        return water && !directions.waterPermitted() ? Optional.of("water is not permitted") : Optional.empty();
    }

    private static String words(WeighedMix.Fault fault, WeighedMix.Bounds bounds, boolean shown) {
        String often = shown ? "" : "maybe ";
        String why = shown ? ": " : ", as the scale may err: ";
        return switch (fault) {
            case TOO_LITTLE_DEVELOPER ->
                often + "too little developer" + why + "at least " + AmountText.ratio(bounds.lowestRatioThousandths());
            case TOO_MUCH_DEVELOPER ->
                often + "too much developer" + why + "at most " + AmountText.ratio(bounds.highestRatioThousandths());
            case TOO_STRONG ->
                often + "too strong" + why + "at most " + AmountText.strength(bounds.highestStrengthHundredths());
        };
    }

    /**
     * The lowest ceiling among the techniques of the bowl's run, and of the other bowl's where they are one mix; never above
     * that of the law.
     */
    static int strengthCeiling(Day day, BowlState bowl, Directions directions) {
        return bowl.batch()
                .map(batch -> batch.bowls().stream().flatMap(id -> day.bowl(id).stream()))
                .orElse(Stream.of(bowl))
                .mapToInt(one -> ownCeiling(day, one, directions))
                .map(ceiling -> Math.min(ceiling, LegalLimits.ON_HAIR_HUNDREDTHS))
                .min()
                .orElse(0);
    }

    private static int ownCeiling(Day day, BowlState bowl, Directions directions) {
        var service = day.service(bowl.service()).orElseThrow();
        var run = FormulaRun.of(day.menuEntry(service)).get(bowl.run() - 1);
        return run.zones().stream()
                .flatMap(zone -> directions.techniques().stream()
                        .filter(rule -> rule.technique().equals(zone.technique())))
                .mapToInt(Directions.TechniqueRule::highestStrengthHundredths)
                .min()
                .orElse(0);
    }

    static Directions directions(Day day, BowlState bowl) {
        return day.opened().directions(bowl.planned().lightenerId()).orElseThrow();
    }

    /** The scale a bowl is weighed on. */
    static Scale scale(Day day, BowlState bowl) {
        var salon = day.opened().salon();
        return salon.scale(bowl.scaleId()).orElse(salon.scales().get(0));
    }
}
