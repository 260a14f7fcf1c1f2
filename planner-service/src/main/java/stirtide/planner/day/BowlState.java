package stirtide.planner.day;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stirtide.events.day.BowlFormula;
import stirtide.events.day.DeveloperPart;
import stirtide.events.day.OverMixCause;

/**
 * A bowl that was begun.
 *
 * @param bowl bowl id, such as {@code "7b"}
 * @param service service number
 * @param run number of the run within the service, from 1
 * @param personId who mixes
 * @param scaleId scale it is weighed on
 * @param bowlSizeId size of the bowl
 * @param planned what was to be weighed
 * @param begunAt when mixing began
 * @param lifeEnds when the mix must no longer be applied
 * @param weighed what was really weighed, once it is known
 * @param handedOverAt when the bowl was at its chair
 * @param closed how the bowl ended
 * @param endingNoted whether the day knows that the life is ending
 * @param endedNoted whether the day knows that the life has ended
 */
public record BowlState(
        String bowl,
        int service,
        int run,
        String personId,
        String scaleId,
        String bowlSizeId,
        BowlFormula planned,
        Instant begunAt,
        Instant lifeEnds,
        Optional<Weighed> weighed,
        Optional<Instant> handedOverAt,
        Optional<Closed> closed,
        boolean endingNoted,
        boolean endedNoted) {

    /** What was really weighed, in milligrams, and whether the directions permit it. */
    public record Weighed(
            int lightenerMilligrams,
            List<DeveloperPart> developerParts,
            int ratioThousandths,
            boolean insideDirections,
            Instant at) {
        /** Weight of all liquids, in milligrams. */
        public int developerMilligrams() {
            return developerParts.stream().mapToInt(DeveloperPart::milligrams).sum();
        }
    }

    /** How a bowl ended: used up (no cause, nothing left) or binned. */
    public record Closed(Instant at, int leftMilligrams, Optional<OverMixCause> cause) {}

    /** Where a live bowl is. */
    public enum Stage {
        MIXING,
        WEIGHED,
        AT_CHAIR
    }

    /** Neither used up nor binned. */
    public boolean live() {
        return closed.isEmpty();
    }

    /** Where the bowl is, or was when it was closed. */
    public Stage stage() {
        if (handedOverAt.isPresent()) return Stage.AT_CHAIR;
        return weighed.isPresent() ? Stage.WEIGHED : Stage.MIXING;
    }

    /** Still at the bar, so that something can be poured into it. */
    public boolean mixable() {
        return live() && handedOverAt.isEmpty();
    }

    /** Somebody is at it and its scale is taken. */
    public boolean mixing() {
        return live() && stage() == Stage.MIXING;
    }

    /** What is or was in the bowl, in milligrams: as weighed, or as planned while nobody has weighed. */
    public int mixedMilligrams() {
        return weighed.map(w -> w.lightenerMilligrams() + w.developerMilligrams())
                .orElse(planned.totalMilligrams());
    }

    BowlState weighed(Weighed truth) {
        return new BowlState(
                bowl,
                service,
                run,
                personId,
                scaleId,
                bowlSizeId,
                planned,
                begunAt,
                lifeEnds,
                Optional.of(truth),
                handedOverAt,
                closed,
                endingNoted,
                endedNoted);
    }

    BowlState handedOver(Instant at) {
        return new BowlState(
                bowl,
                service,
                run,
                personId,
                scaleId,
                bowlSizeId,
                planned,
                begunAt,
                lifeEnds,
                weighed,
                Optional.of(at),
                closed,
                endingNoted,
                endedNoted);
    }

    BowlState closed(Closed end) {
        return new BowlState(
                bowl,
                service,
                run,
                personId,
                scaleId,
                bowlSizeId,
                planned,
                begunAt,
                lifeEnds,
                weighed,
                handedOverAt,
                Optional.of(end),
                endingNoted,
                endedNoted);
    }

    BowlState noted(boolean ending, boolean ended) {
        return new BowlState(
                bowl,
                service,
                run,
                personId,
                scaleId,
                bowlSizeId,
                planned,
                begunAt,
                lifeEnds,
                weighed,
                handedOverAt,
                closed,
                endingNoted || ending,
                endedNoted || ended);
    }
}
