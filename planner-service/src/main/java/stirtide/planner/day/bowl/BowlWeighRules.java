package stirtide.planner.day.bowl;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.formula.DeveloperPart;
import stirtide.mixing.text.AmountText;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;

/**
 * Weighing a bowl in. What was weighed is recorded as it is, right or wrong; whether the directions permit it is judged
 * exactly, in whole numbers, and a bowl they do not permit can only be weighed anew or binned.
 */
public final class BowlWeighRules {
    private static final int MOST_PARTS = 3;
    /** Weights beyond this many times the usable fill are a slip of the finger: no such bowl holds them. */
    private static final int HIGHEST_FILL = 2;

    private BowlWeighRules() {}

    static Decision weigh(Day day, DayCommand.WeighBowl command) {
        return NamedBowl.live(day, command.bowl(), bowl -> weighLive(day, bowl, command));
    }

    private static Decision weighLive(Day day, BowlState bowl, DayCommand.WeighBowl command) {
        if (bowl.handedOverAt().isPresent())
            return Decision.refuse(
                    "BOWL_AT_CHAIR",
                    "Bowl " + bowl.bowl() + " is at its chair and cannot be weighed in any more. Finish it or bin it.");
        if (bowl.batch().isPresent()) return partOfBatch(bowl);
        int lightener = command.lightenerMilligrams();
        var parts = command.developerParts();
        return Decision.acceptUnless(
                weightsObjection(day, bowl, lightener, parts),
                () -> new DayEvent.BowlWeighed(
                        bowl.bowl(),
                        lightener,
                        parts,
                        ratioThousandths(lightener, parts),
                        DirectionsCheck.complaint(day, bowl, lightener, parts).isEmpty()));
    }

    private static Decision partOfBatch(BowlState bowl) {
        var batch = bowl.batch().orElseThrow();
        return Decision.refuse(
                "BOWL_IN_BATCH",
                "Bowls " + String.join(" and ", batch.bowls()) + " are one mix. "
                        + (batch.divided()
                                ? "Weigh what is poured into bowl " + batch.pouredInto() + " anew and divide again."
                                : "Weigh in the whole mix in bowl " + batch.mixedIn() + ", then divide it."));
    }

    /** Developer per lightener, rounded to nearest, half up; used on screens only. The judgment is exact. */
    public static int ratioThousandths(long lightener, List<DeveloperPart> parts) {
        return (int) Math.min(Integer.MAX_VALUE, (2000 * sum(parts) + lightener) / (2 * lightener));
    }

    /** What is wrong with weights as typed, whatever the directions permit. */
    public static Optional<Refusal> weightsObjection(
            Day day, BowlState bowl, int lightenerMilligrams, List<DeveloperPart> parts) {
        if (lightenerMilligrams <= 0)
            return Refusal.of("WEIGHT_NOT_POSITIVE", "The weight of lightener is more than 0 milligrams.");
        if (parts.isEmpty() || parts.size() > MOST_PARTS)
            return Refusal.of("PARTS_COUNT", "A bowl has 1 to " + MOST_PARTS + " liquids.");
        var known = new TreeSet<String>();
        day.opened().developers().forEach(developer -> known.add(developer.developerId()));
        known.add(DeveloperPart.WATER);
        var seen = new HashSet<String>();
        for (var part : parts) {
            if (part.milligrams() < 0)
                return Refusal.of("WEIGHT_NOT_POSITIVE", "The weight of a liquid is 0 milligrams or more.");
            if (!known.contains(part.developerId()))
                return Refusal.of(
                        "DEVELOPER_UNKNOWN",
                        "\"" + part.developerId() + "\" is not on the shelf. Accepted: " + Refusal.listed(known) + ".");
            if (!seen.add(part.developerId()))
                return Refusal.of("DEVELOPER_TWICE", "Name each liquid once, with all of its weight.");
        }
        return sizeObjection(day, bowl, lightenerMilligrams + sum(parts), sum(parts));
    }

    private static Optional<Refusal> sizeObjection(Day day, BowlState bowl, long total, long liquid) {
        if (liquid == 0) return Refusal.of("WEIGHT_NOT_POSITIVE", "The liquids together weigh more than 0 milligrams.");
        long most = mostMilligrams(day, bowl);
        if (total <= most) return Optional.empty();
        return Refusal.of(
                "WEIGHT_BEYOND_BOWL",
                AmountText.grams(total) + " cannot be in a bowl of size " + bowl.bowlSizeId() + ". Accepted: "
                        + AmountText.grams(most) + " at most, all parts together.");
    }

    /** Most that can be in a bowl, whatever is typed, in milligrams. */
    public static long mostMilligrams(Day day, BowlState bowl) {
        var size = day.opened().salon().bowlSize(bowl.bowlSizeId()).orElseThrow();
        return (long) HIGHEST_FILL * size.usableMilligrams();
    }

    private static long sum(List<DeveloperPart> parts) {
        return parts.stream().mapToLong(DeveloperPart::milligrams).sum();
    }
}
