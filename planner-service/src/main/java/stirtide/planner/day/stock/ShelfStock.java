package stirtide.planner.day.stock;

import java.util.List;
import java.util.Optional;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.BowlWeights;
import stirtide.planner.day.state.Day;

/**
 * What is left on the shelf of what was counted at opening, after the bowls begun so far. A bowl that is not weighed
 * takes what was planned; of a weighed one the developers take their planned shares of what was weighed. A product that
 * was counted or received during the day goes by that instead, less what was really weighed since.
 *
 * @param day the day
 */
public record ShelfStock(Day day) {
    /** Lighteners with what is left of them. */
    public List<Directions> directions() {
        return day.opened().directions().stream().map(this::left).toList();
    }

    /** Developers with what is left of them. */
    public List<Developer> developers() {
        return day.opened().developers().stream().map(this::left).toList();
    }

    /** Counted on the day: what a bowl will take that is not weighed yet is still on the shelf, but reserved. */
    private Optional<Integer> counted(String productId, Optional<Integer> atOpening) {
        long waiting = day.bowls()
                .filter(bowl -> bowl.weighed().isEmpty() && bowl.live())
                .mapToLong(bowl -> bowl.planned().lightenerId().equals(productId)
                        ? bowl.planned().lightenerMilligrams()
                        : bowl.planned().developerParts().stream()
                                .filter(part -> part.developerId().equals(productId))
                                .mapToLong(part -> part.milligrams())
                                .sum())
                .sum();
        return less(ShelfEvents.left(day, productId, atOpening), waiting);
    }

    private Directions left(Directions all) {
        if (ShelfEvents.touched(day, all.lightenerId()))
            return all.withCountedMilligrams(counted(all.lightenerId(), all.countedMilligrams()));
        long used = day.bowls()
                .filter(bowl -> bowl.planned().lightenerId().equals(all.lightenerId()))
                .mapToLong(bowl -> bowl.weighed()
                        .map(BowlWeights::lightenerMilligrams)
                        .orElse(bowl.planned().lightenerMilligrams()))
                .sum();
        if (used == 0 || all.countedMilligrams().isEmpty()) return all;
        return all.withCountedMilligrams(less(all.countedMilligrams(), used));
    }

    private Developer left(Developer all) {
        boolean touched = ShelfEvents.touched(day, all.developerId());
        long used = day.bowls().mapToLong(bowl -> used(bowl, all)).sum();
        return all.withCountedMilligrams(
                touched ? counted(all.developerId(), all.countedMilligrams()) : less(all.countedMilligrams(), used));
    }

    private static long used(BowlState bowl, Developer developer) {
        long planned = bowl.planned().developerMilligrams();
        long part = bowl.planned().developerParts().stream()
                .filter(each -> each.developerId().equals(developer.developerId()))
                .mapToLong(each -> each.milligrams())
                .sum();
        if (part == 0) return 0;
        return bowl.weighed()
                .map(weighed -> part * weighed.developerMilligrams() / planned)
                .orElse(part);
    }

    private static Optional<Integer> less(Optional<Integer> counted, long used) {
        return counted.map(grams -> (int) Math.max(0, grams - used));
    }
}
