package stirtide.planner.day.bowl;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.setup.BowlSize;
import stirtide.mixing.text.AmountText;
import stirtide.planner.day.booking.BookingRules;
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

    public static Decision weigh(Day day, DayCommand.WeighBowl command) {
        var found = day.bowl(command.bowl());
        if (found.isEmpty()) return BowlRules.noBowl(day, command.bowl());
        var bowl = found.get();
        if (!bowl.live()) return BowlRules.closed(day, bowl);
        if (bowl.handedOverAt().isPresent())
            return Decision.refuse(
                    "BOWL_AT_CHAIR",
                    "Bowl " + bowl.bowl() + " is at its chair and cannot be weighed in any more. Finish it or bin it.");
        if (bowl.batch().isPresent()) return partOfBatch(bowl);
        var wrong = weightsObjection(day, bowl, command.lightenerMilligrams(), command.developerParts());
        if (wrong.isPresent()) return new Decision.Refused(wrong.get());
        return Decision.accept(new DayEvent.BowlWeighed(
                bowl.bowl(),
                command.lightenerMilligrams(),
                command.developerParts(),
                ratioThousandths(command.lightenerMilligrams(), command.developerParts()),
                DirectionsCheck.complaint(day, bowl, command.lightenerMilligrams(), command.developerParts())
                        .isEmpty()));
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

    public static Optional<Refusal> weightsObjection(
            Day day, BowlState bowl, int lightenerMilligrams, List<DeveloperPart> parts) {
        if (lightenerMilligrams <= 0)
            return refusal("WEIGHT_NOT_POSITIVE", "The weight of lightener is more than 0 milligrams.");
        if (parts.isEmpty() || parts.size() > MOST_PARTS)
            return refusal("PARTS_COUNT", "A bowl has 1 to " + MOST_PARTS + " liquids.");
        var known = new TreeSet<String>();
        day.opened().developers().forEach(developer -> known.add(developer.developerId()));
        known.add(DeveloperPart.WATER);
        var seen = new HashSet<String>();
        for (var part : parts) {
            if (part.milligrams() < 0)
                return refusal("WEIGHT_NOT_POSITIVE", "The weight of a liquid is 0 milligrams or more.");
            if (!known.contains(part.developerId()))
                return refusal(
                        "DEVELOPER_UNKNOWN",
                        "\"" + part.developerId() + "\" is not on the shelf. Accepted: " + BookingRules.listed(known)
                                + ".");
            if (!seen.add(part.developerId()))
                return refusal("DEVELOPER_TWICE", "Name each liquid once, with all of its weight.");
        }
        return sizeObjection(day, bowl, lightenerMilligrams + sum(parts), sum(parts));
    }

    private static Optional<Refusal> sizeObjection(Day day, BowlState bowl, long total, long liquid) {
        if (liquid == 0) return refusal("WEIGHT_NOT_POSITIVE", "The liquids together weigh more than 0 milligrams.");
        long most = mostMilligrams(day, bowl);
        if (total <= most) return Optional.empty();
        return refusal(
                "WEIGHT_BEYOND_BOWL",
                AmountText.grams(total) + " cannot be in a bowl of size " + bowl.bowlSizeId() + ". Accepted: "
                        + AmountText.grams(most) + " at most, all parts together.");
    }

    /** Most that can be in a bowl, whatever somebody types. */
    public static long mostMilligrams(Day day, BowlState bowl) {
        return (long) HIGHEST_FILL * size(day, bowl).usableMilligrams();
    }

    private static BowlSize size(Day day, BowlState bowl) {
        return day.opened().salon().bowls().stream()
                .filter(size -> size.bowlSizeId().equals(bowl.bowlSizeId()))
                .findFirst()
                .orElseThrow();
    }

    private static long sum(List<DeveloperPart> parts) {
        return parts.stream().mapToLong(DeveloperPart::milligrams).sum();
    }

    private static Optional<Refusal> refusal(String code, String sentence) {
        return Optional.of(new Refusal(code, sentence));
    }
}
