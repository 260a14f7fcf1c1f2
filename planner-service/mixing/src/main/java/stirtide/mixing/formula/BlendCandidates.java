package stirtide.mixing.formula;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stirtide.mixing.strength.LegalLimits;
import stirtide.mixing.strength.Liquid;

/**
 * What the shelf offers for a strength, as a ladder: the first rung is a developer of exactly that strength, then pairs
 * of developers, then a developer with water where the directions permit, then three liquids. Within a rung the liquids
 * closest in strength come first, because a weighing error changes their blend least. A developer above the legal
 * ceiling is never part of a blend.
 */
final class BlendCandidates {
    private static final Comparator<Liquid> BY_STRENGTH =
            Comparator.comparingInt(Liquid::strengthHundredths).thenComparing(Liquid::id);

    private BlendCandidates() {}

    static List<List<List<Liquid>>> ladder(FormulaQuestion question) {
        List<Liquid> liquids = question.shelf().stream()
                .map(Liquid::of)
                .filter(liquid -> liquid.strengthHundredths() <= LegalLimits.ON_HAIR_HUNDREDTHS)
                .filter(liquid -> liquid.mostMilligrams() > 0)
                .sorted(BY_STRENGTH)
                .toList();
        int wanted = question.strengthHundredths();
        List<List<List<Liquid>>> ladder = new ArrayList<>();
        add(ladder, exact(liquids, wanted));
        add(ladder, pairs(liquids, wanted));
        if (question.directions().waterPermitted()) {
            List<Liquid> withWater = new ArrayList<>(liquids);
            withWater.add(0, Liquid.WATER);
            add(
                    ladder,
                    pairs(withWater, wanted).stream()
                            .filter(pair -> pair.contains(Liquid.WATER))
                            .toList());
            add(ladder, triples(withWater, question));
        } else add(ladder, triples(liquids, question));
        return ladder;
    }

    private static void add(List<List<List<Liquid>>> ladder, List<List<Liquid>> rung) {
        if (!rung.isEmpty()) ladder.add(rung);
    }

    private static List<List<Liquid>> exact(List<Liquid> liquids, int wanted) {
        return liquids.stream()
                .filter(liquid -> liquid.strengthHundredths() == wanted)
                .map(List::of)
                .toList();
    }

    /** Pairs with one liquid stronger and one weaker than wanted, the stronger first. */
    private static List<List<Liquid>> pairs(List<Liquid> liquids, int wanted) {
        List<List<Liquid>> pairs = new ArrayList<>();
        for (Liquid strong : liquids)
            for (Liquid weak : liquids)
                if (strong.strengthHundredths() > wanted && weak.strengthHundredths() < wanted)
                    pairs.add(List.of(strong, weak));
        pairs.sort(Comparator.comparingInt(BlendCandidates::gap));
        return pairs;
    }

    /**
     * Every pair with one more liquid, the one more first. Only where the shelf may run short in one bowl: as long as
     * two suffice by count, a third only adds its own weighing error.
     */
    private static List<List<Liquid>> triples(List<Liquid> liquids, FormulaQuestion question) {
        List<List<Liquid>> triples = new ArrayList<>();
        if (liquids.stream().allMatch(liquid -> liquid.mostMilligrams() >= question.usableMilligrams())) return triples;
        for (List<Liquid> pair : pairs(liquids, question.strengthHundredths()))
            for (Liquid more : liquids)
                if (isMore(more, pair, question.strengthHundredths()))
                    triples.add(List.of(more, pair.get(0), pair.get(1)));
        return triples;
    }

    /** Of three liquids, the one nearest to the wanted strength is the one more; ties by order of strength. */
    private static boolean isMore(Liquid more, List<Liquid> pair, int wanted) {
        int distance = Math.abs(more.strengthHundredths() - wanted);
        return !pair.contains(more)
                && pair.stream().allMatch(other -> Math.abs(other.strengthHundredths() - wanted) >= distance);
    }

    private static int gap(List<Liquid> pair) {
        return pair.get(0).strengthHundredths() - pair.get(1).strengthHundredths();
    }
}
