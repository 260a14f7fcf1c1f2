package stirtide.planner.day.stock;

import java.util.List;
import java.util.Optional;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;

/**
 * What is left on the shelf of what was counted at opening, after the bowls begun so far. A bowl that nobody has weighed
 * takes what was planned; of a weighed one the developers take their planned shares of what was weighed. A product that
 * was counted or received during the day goes by that instead, less what was really weighed since.
 *
 * @param day the day
 */
public record ShelfStock(Day day) {
    public List<Directions> directions() {
        return day.opened().directions().stream().map(this::left).toList();
    }

    public List<Developer> developers() {
        return day.opened().developers().stream().map(this::left).toList();
    }

    private List<BowlState> begun() {
        return day.services().stream()
                .flatMap(service -> service.bowls().stream())
                .toList();
    }

    /** Counted on the day: what a bowl that nobody has weighed will take is still on the shelf, but spoken for. */
    private Optional<Integer> counted(String productId, Optional<Integer> atOpening) {
        long waiting = begun().stream()
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
            return counting(all, counted(all.lightenerId(), all.countedMilligrams()));
        long used = begun().stream()
                .filter(bowl -> bowl.planned().lightenerId().equals(all.lightenerId()))
                .mapToLong(bowl -> bowl.weighed()
                        .map(BowlState.Weighed::lightenerMilligrams)
                        .orElse(bowl.planned().lightenerMilligrams()))
                .sum();
        if (used == 0 || all.countedMilligrams().isEmpty()) return all;
        return counting(all, less(all.countedMilligrams(), used));
    }

    private static Directions counting(Directions all, Optional<Integer> left) {
        return new Directions(
                all.lightenerId(),
                all.name(),
                all.form(),
                all.workingLifeMinutes(),
                all.mixMinutes(),
                all.waterPermitted(),
                all.techniques(),
                all.packMilligrams(),
                all.packPrice(),
                left,
                all.strandTestHours(),
                all.patchTestHours(),
                all.cautions());
    }

    private Developer left(Developer all) {
        boolean touched = ShelfEvents.touched(day, all.developerId());
        long used = begun().stream().mapToLong(bowl -> used(bowl, all)).sum();
        return new Developer(
                all.developerId(),
                all.name(),
                all.strengthHundredths(),
                all.packMilligrams(),
                all.packPrice(),
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
