package stirtide.planner.day.state;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stirtide.events.day.OverMixCause;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;

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
 * @param batch the mix for two bowls it is a part of, if it is
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
        boolean endedNoted,
        Optional<BatchState> batch) {

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

        /** Weight of the whole mix, in milligrams. */
        public int totalMilligrams() {
            return lightenerMilligrams + developerMilligrams();
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

    /** Part of a mix for two bowls that is still all in one of them. */
    public boolean undivided() {
        return batch.filter(mix -> !mix.divided()).isPresent();
    }

    /** Whether this bowl is the one its mix was made in: any bowl but the second of a batch. */
    public boolean mixedHere() {
        return batch.filter(mix -> mix.pouredInto().equals(bowl)).isEmpty();
    }

    /** Where the bowl is, or was when it was closed. */
    public Stage stage() {
        if (handedOverAt.isPresent()) return Stage.AT_CHAIR;
        if (undivided()) return Stage.MIXING;
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
        return weighed.map(Weighed::totalMilligrams).orElse(planned.totalMilligrams());
    }

    /** The mix of its batch as it lies in this one bowl before it is divided; the bowl itself where there is no batch. */
    public BowlState whole() {
        return batch.map(mix -> {
                    var copy = new Copy(this);
                    copy.planned = mix.planned();
                    copy.weighed = mix.whole();
                    return copy.bowl();
                })
                .orElse(this);
    }

    public BowlState weighed(Weighed truth) {
        var copy = new Copy(this);
        copy.weighed = Optional.of(truth);
        return copy.bowl();
    }

    public BowlState sharing(BatchState mix, Weighed share) {
        var copy = new Copy(this);
        copy.batch = Optional.of(mix);
        copy.weighed = Optional.of(share);
        return copy.bowl();
    }

    public BowlState handedOver(Instant at) {
        var copy = new Copy(this);
        copy.handedOverAt = Optional.of(at);
        return copy.bowl();
    }

    public BowlState closed(Closed end) {
        var copy = new Copy(this);
        copy.closed = Optional.of(end);
        return copy.bowl();
    }

    public BowlState noted(boolean ending, boolean ended) {
        var copy = new Copy(this);
        copy.endingNoted |= ending;
        copy.endedNoted |= ended;
        return copy.bowl();
    }

    /** A bowl while some of it is being replaced. */
    private static final class Copy {
        private final BowlState old;
        private BowlFormula planned;
        private Optional<Weighed> weighed;
        private Optional<Instant> handedOverAt;
        private Optional<Closed> closed;
        private boolean endingNoted;
        private boolean endedNoted;
        private Optional<BatchState> batch;

        private Copy(BowlState bowl) {
            old = bowl;
            planned = bowl.planned;
            weighed = bowl.weighed;
            handedOverAt = bowl.handedOverAt;
            closed = bowl.closed;
            endingNoted = bowl.endingNoted;
            endedNoted = bowl.endedNoted;
            batch = bowl.batch;
        }

        private BowlState bowl() {
            return new BowlState(
                    old.bowl,
                    old.service,
                    old.run,
                    old.personId,
                    old.scaleId,
                    old.bowlSizeId,
                    planned,
                    old.begunAt,
                    old.lifeEnds,
                    weighed,
                    handedOverAt,
                    closed,
                    endingNoted,
                    endedNoted,
                    batch);
        }
    }
}
