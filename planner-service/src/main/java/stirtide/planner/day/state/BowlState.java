package stirtide.planner.day.state;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Instant;
import java.util.Optional;
import stirtide.events.day.DayEvent.BowlBegun;
import stirtide.events.day.OverMixCause;
import stirtide.events.formula.BowlFormula;

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
@RecordBuilder
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
        Optional<BowlWeights> weighed,
        Optional<Instant> handedOverAt,
        Optional<Closed> closed,
        boolean endingNoted,
        boolean endedNoted,
        Optional<BatchState> batch)
        implements BowlStateBuilder.With {

    /** How a bowl ended: used up (no cause, nothing left) or binned. */
    public record Closed(Instant at, int leftMilligrams, Optional<OverMixCause> cause) {}

    /** Where a live bowl is. */
    public enum Stage {
        MIXING,
        WEIGHED,
        AT_CHAIR
    }

    /** A bowl just begun. */
    public static BowlState begun(BowlBegun begun, Instant at) {
        return new BowlState(
                begun.bowl(),
                begun.service(),
                begun.run(),
                begun.personId(),
                begun.scaleId(),
                begun.bowlSizeId(),
                begun.planned(),
                at,
                begun.lifeEnds(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                false,
                Optional.empty());
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

    /** It is being mixed: its person and its scale are taken. */
    public boolean mixing() {
        return live() && stage() == Stage.MIXING;
    }

    /** What is or was in the bowl, in milligrams: as weighed, or as planned while it is not weighed. */
    public int mixedMilligrams() {
        return weighed.map(BowlWeights::totalMilligrams).orElse(planned.totalMilligrams());
    }

    /** The mix of its batch as it lies in this one bowl before it is divided; the bowl itself where there is no batch. */
    public BowlState whole() {
        return batch.map(mix -> withPlanned(mix.planned()).withWeighed(mix.whole()))
                .orElse(this);
    }

    /** The same used up. */
    public BowlState finished(Instant at) {
        return withClosed(Optional.of(new Closed(at, 0, Optional.empty())));
    }

    /** The same binned with something left. */
    public BowlState binned(Instant at, int leftMilligrams, OverMixCause cause) {
        return withClosed(Optional.of(new Closed(at, leftMilligrams, Optional.of(cause))));
    }

    /** The same with what the day knows of its life; nothing known is forgotten. */
    public BowlState noted(boolean ending, boolean ended) {
        return withEndingNoted(endingNoted || ending).withEndedNoted(endedNoted || ended);
    }
}
