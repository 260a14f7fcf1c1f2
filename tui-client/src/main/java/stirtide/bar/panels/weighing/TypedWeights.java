package stirtide.bar.panels.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stirtide.bar.panels.form.GramsField;
import stirtide.bar.text.WeightText;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.view.PourAdvice;
import stirtide.mixing.text.AmountText;
import stirtide.mixing.weighing.Ratios;

/** The weights of a bowl as they are typed, lightener first, beside what was planned. */
final class TypedWeights {
    private static final int RATIO_DIVISOR = 10;

    private final WeighTarget target;
    private final List<GramsField> fields;

    TypedWeights(WeighTarget target) {
        this(
                target,
                Stream.concat(
                                Stream.of(new GramsField(target.lightenerName(), false)),
                                target.mix().parts().stream()
                                        .map(part -> new GramsField(
                                                WeightText.liquid(part.strengthHundredths(), part.name()), true)))
                        .toList());
    }

    private TypedWeights(WeighTarget target, List<GramsField> fields) {
        this.target = target;
        this.fields = fields;
    }

    /** The same fields for what the service says of the bowl now. */
    TypedWeights of(WeighTarget newer) {
        return new TypedWeights(newer, fields);
    }

    WeighTarget target() {
        return target;
    }

    List<GramsField> fields() {
        return fields;
    }

    /** Planned weight of a field, in milligrams. */
    int plannedMilligrams(int place) {
        return place == 0
                ? target.mix().lightenerMilligrams()
                : target.mix().parts().get(place - 1).milligrams();
    }

    /** Typed lightener in milligrams, empty while it is no weight. */
    OptionalInt lightener() {
        return fields.get(0).milligrams();
    }

    /** Typed liquids in milligrams, empty while one of them is no weight. */
    Optional<List<Integer>> liquids() {
        List<Integer> weights = fields.stream()
                .skip(1)
                .flatMapToInt(field -> field.milligrams().stream())
                .boxed()
                .toList();
        return weights.size() == fields.size() - 1 ? Optional.of(weights) : Optional.empty();
    }

    /** The liquids as a command names them; every field must hold a weight. */
    List<DeveloperPart> developerParts() {
        List<Integer> weights = liquids().orElseThrow();
        return IntStream.range(0, weights.size())
                .mapToObj(i -> new DeveloperPart(target.mix().parts().get(i).developerId(), weights.get(i)))
                .toList();
    }

    /** Sum of lightener and liquids in milligrams; every field must hold a weight. */
    int totalMilligrams() {
        return fields.stream()
                .mapToInt(field -> field.milligrams().orElseThrow())
                .sum();
    }

    /** {@code 40.0 + 80.0 g}; every field must hold a weight. */
    String text() {
        return fields.stream()
                        .map(field -> WeightText.grams(field.milligrams().orElseThrow()))
                        .collect(Collectors.joining(" + "))
                + " g";
    }

    /** What is typed so far as the contract writes it; empty text while it is as planned. */
    String poured() {
        var pours = new ArrayList<String>();
        boolean asPlanned = true;
        for (int i = 0; i < fields.size(); i++) {
            int milligrams = fields.get(i).milligrams().orElse(0);
            if (milligrams == 0) continue;
            asPlanned &= milligrams == plannedMilligrams(i);
            String part = i == 0
                    ? PourAdvice.LIGHTENER
                    : target.mix().parts().get(i - 1).developerId();
            pours.add(part + ":" + milligrams);
        }
        return asPlanned ? "" : String.join(",", pours);
    }

    /** What is unusual about the weights, none when all is well. */
    List<String> warnings() {
        var warnings = new ArrayList<String>();
        for (int i = 0; i < fields.size(); i++) {
            int planned = plannedMilligrams(i);
            int limit = GramsField.usualLimit(planned);
            int off = fields.get(i).milligrams().orElse(planned) - planned;
            if (Math.abs(off) > limit)
                warnings.add(fields.get(i).label() + " " + signed(off) + " g, usual limit " + WeightText.grams(limit)
                        + " g");
        }
        if (lightener().isEmpty() || liquids().isEmpty()) return warnings;
        int developer = totalMilligrams() - lightener().getAsInt();
        int ratio = Ratios.thousandths(lightener().getAsInt(), developer);
        int wanted = target.mix().wantedRatioThousandths();
        if (Math.abs(ratio - wanted) > wanted / RATIO_DIVISOR)
            warnings.add("ratio " + AmountText.ratio(ratio) + ", planned " + AmountText.ratio(wanted));
        warnings.addAll(advice());
        return warnings;
    }

    /** Where the weights stand against the directions, none when all is well. */
    List<String> advice() {
        return new RatioCheck(target).advice(lightener(), liquids());
    }

    /** Whether all weights are inside the directions whatever the error of the scale; every field must hold a weight. */
    boolean isInside() {
        return new RatioCheck(target)
                .isInside(lightener().orElseThrow(), liquids().orElseThrow());
    }

    static String signed(int milligrams) {
        return (milligrams < 0 ? "-" : "+") + WeightText.grams(Math.abs(milligrams));
    }
}
