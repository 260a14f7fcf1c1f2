package stirtide.planner.day.state;

import java.util.List;
import java.util.Optional;
import stirtide.events.formula.BowlFormula;

/**
 * One mix that fills two bowls. Both bowls carry it, and it is the same for both.
 *
 * @param bowls ids of the two bowls; in the first it is mixed
 * @param planned what was to be weighed, for both together
 * @param whole what was really weighed, for both together, once it is known
 * @param divided whether the second bowl has its share
 */
public record BatchState(List<String> bowls, BowlFormula planned, Optional<BowlWeights> whole, boolean divided) {
    public BatchState {
        bowls = List.copyOf(bowls);
    }

    /** The bowl it is mixed in; the batch goes by its name. */
    public String mixedIn() {
        return bowls.get(0);
    }

    /** The bowl that gets its share from the other. */
    public String pouredInto() {
        return bowls.get(1);
    }

    /** The same after the whole mix was weighed, which undoes an earlier dividing. */
    public BatchState weighed(BowlWeights truth) {
        return new BatchState(bowls, planned, Optional.of(truth), false);
    }

    /** The same after it was divided. */
    public BatchState dividedNow() {
        return new BatchState(bowls, planned, whole, true);
    }
}
