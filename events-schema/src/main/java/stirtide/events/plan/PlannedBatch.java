package stirtide.events.plan;

import java.time.Instant;
import java.util.List;
import stirtide.events.formula.BowlFormula;

/**
 * Two planned bowls of different clients that may be weighed as one mix and divided at once. Each of them also stands in
 * the plan alone, with weights, person and time of its own, so either may be mixed alone and no client waits for it.
 *
 * <p>The mix is made in the bowl named first; then the share of the second is poured into it by weight. The working life
 * of both runs from the start of that mix.
 *
 * @param shares the bowl it is mixed in, then the bowl that gets its share from it
 * @param mixStart when mixing starts; the working life of both bowls runs from here
 * @param mixEnd when the mix is made and divided
 * @param lifeEnds when neither bowl may be applied any more
 * @param personId assistant who mixes
 * @param scaleId scale to use
 * @param formula what to weigh, for both together
 * @param savedMinutes minutes of mixing that two mixes would take more
 * @param savedMilligrams grams that two mixes would take more, 0 or more
 */
public record PlannedBatch(
        List<Share> shares,
        Instant mixStart,
        Instant mixEnd,
        Instant lifeEnds,
        String personId,
        String scaleId,
        BowlFormula formula,
        int savedMinutes,
        int savedMilligrams) {
    /** Minutes for pouring one bowl of two by weight: common practice, no source. */
    public static final int DIVIDE_MINUTES = 1;

    public PlannedBatch {
        shares = List.copyOf(shares);
        if (shares.size() != 2) throw new IllegalArgumentException("a batch fills two bowls, not " + shares.size());
    }

    /**
     * One bowl of a batch.
     *
     * @param bowl id of the planned bowl
     * @param bowlSizeId size of bowl to use; the bowl it is mixed in may be larger than for its share alone
     * @param milligrams grams of the mix that are to be in it
     */
    public record Share(String bowl, String bowlSizeId, int milligrams) {}

    /** Ids of the two bowls, the one it is mixed in first. */
    public List<String> bowlIds() {
        return shares.stream().map(Share::bowl).toList();
    }
}
