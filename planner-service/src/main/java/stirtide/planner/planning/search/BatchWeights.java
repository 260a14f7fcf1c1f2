package stirtide.planner.planning.search;

import java.util.List;
import java.util.Optional;
import stirtide.events.formula.BowlFormula;
import stirtide.events.plan.PlannedBatch.Share;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Scale;
import stirtide.mixing.formula.FormulaAnswer;
import stirtide.mixing.formula.FormulaQuestion;
import stirtide.mixing.formula.FormulaSearch;
import stirtide.mixing.weighing.ScaleErrors;
import stirtide.planner.planning.search.PlanQuestion.RunTask;

/**
 * What to weigh for two bowls together. The mix is made in one of them, big enough for all of it, and the other gets its
 * share by weight: need and residue, rounded up to what the scale shows. Where the two clients' techniques differ, the
 * narrowest window and the lowest ceiling hold.
 */
record BatchWeights(PlanQuestion question) {
    /** Weights for both, and what is to be in each bowl, the one it is mixed in first. */
    record Mix(BowlFormula formula, List<Share> shares) {}

    /** Run of a planned bowl, empty when the question does not ask for it. */
    Optional<RunTask> run(PlannedBowl bowl) {
        return question.services().stream()
                .filter(task -> task.service() == bowl.service())
                .flatMap(task -> task.runs().stream())
                .filter(run -> run.run() == bowl.run())
                .findFirst();
    }

    /** The mix that takes least, if one takes no more than two mixes would; of equal ones the first tried. */
    Optional<Mix> mix(PlannedBowl one, PlannedBowl other, Scale scale) {
        Optional<Mix> best = Optional.empty();
        long most = (long) one.formula().totalMilligrams() + other.formula().totalMilligrams();
        for (BowlSize size : question.bowlSizes()) {
            for (List<PlannedBowl> pair : List.of(List.of(one, other), List.of(other, one))) {
                Optional<Mix> mix = mix(pair.get(0), size, pair.get(1), scale, most);
                if (mix.isEmpty()) continue;
                best = mix;
                most = mix.get().formula().totalMilligrams() - 1L;
            }
        }
        return best;
    }

    private Optional<Mix> mix(PlannedBowl first, BowlSize size, PlannedBowl second, Scale scale, long most) {
        int poured = shown(scale, second.neededMilligrams() + second.residueMilligrams());
        int need = first.neededMilligrams() + poured;
        long usable = Math.min(size.usableMilligrams(), most);
        if (size.count() < 1 || (long) need + size.residueMilligrams() > usable) return Optional.empty();
        RunTask run = run(first).orElseThrow();
        Optional<Directions> strictest = strictest(run, first, second);
        if (strictest.isEmpty()) return Optional.empty();
        FormulaAnswer answer = FormulaSearch.find(new FormulaQuestion(
                strictest.get(),
                strictest.get().techniques().get(0).technique(),
                run.strengthHundredths(),
                run.ratioThousandths(),
                question.developers(),
                need,
                size.residueMilligrams(),
                (int) usable,
                scale));
        if (!(answer instanceof FormulaAnswer.Weigh weigh)) return Optional.empty();
        BowlFormula formula = weigh.formula();
        return Optional.of(new Mix(
                formula,
                List.of(
                        new Share(first.bowl(), size.bowlSizeId(), formula.totalMilligrams() - poured),
                        new Share(second.bowl(), second.bowlSizeId(), poured))));
    }

    /** The smallest weight from {@code least} on that the scale can show. */
    private static int shown(Scale scale, int least) {
        ScaleErrors errors = new ScaleErrors(scale);
        int step = errors.stepMilligrams();
        int wanted = Math.max(least, scale.minimumMilligrams());
        int weight = -Math.floorDiv(-wanted, step) * step;
        // Ends: the last range shows every so many steps, or the weight is beyond the scale and no bowl holds it.
        while (!errors.shows(weight) && weight <= errors.maximumMilligrams()) weight += step;
        return weight;
    }

    private Optional<Directions> strictest(RunTask run, PlannedBowl first, PlannedBowl second) {
        return question.directions(run.lightenerId())
                .flatMap(all -> List.of(first, second).stream()
                        .flatMap(bowl -> techniques(bowl).stream())
                        .distinct()
                        .flatMap(technique -> all.techniques().stream()
                                .filter(rule -> rule.technique().equals(technique)))
                        .reduce(BatchWeights::stricter)
                        .map(rule -> all.withTechniques(List.of(rule))));
    }

    private List<String> techniques(PlannedBowl bowl) {
        return run(bowl).orElseThrow().zones().stream()
                .filter(zone -> bowl.zones().contains(zone.zone()))
                .map(PlanQuestion.ZoneTask::technique)
                .toList();
    }

    /** What both permit. */
    static TechniqueRule stricter(TechniqueRule a, TechniqueRule b) {
        return new TechniqueRule(
                a.technique() + " and " + b.technique(),
                a.onScalp() || b.onScalp(),
                Math.max(a.lowestRatioThousandths(), b.lowestRatioThousandths()),
                Math.min(a.highestRatioThousandths(), b.highestRatioThousandths()),
                Math.min(a.highestStrengthHundredths(), b.highestStrengthHundredths()),
                Math.min(a.longestProcessingMinutes(), b.longestProcessingMinutes()));
    }
}
