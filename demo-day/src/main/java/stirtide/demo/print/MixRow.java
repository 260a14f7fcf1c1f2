package stirtide.demo.print;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One bowl as a prep sheet writes it, on paper and as plain text.
 *
 * @param bowl id of the bowl
 * @param personId who mixes it; empty for the stylist
 * @param begin when its mix is begun
 * @param mixEnd when it is mixed, and divided where it is one of two
 * @param lifeEnds when it must no longer be applied
 * @param neededFrom first use at the chair
 * @param neededTo last use at the chair
 * @param start {@code begin} on the clock of the salon
 * @param chair number of the chair
 * @param client reference of the client
 * @param use first to last use on the clock of the salon
 * @param vessel size of bowl and scale
 * @param sizeId size of bowl
 * @param ends {@code lifeEnds} on the clock of the salon
 * @param zones zones it feeds
 * @param together first line of a mix for two bowls
 * @param weights what is put on the scale, in order
 * @param sum the mix as a whole; empty where it comes from the mix of another bowl
 * @param strength strength of the liquids and of the mix, and how far the scale may err; empty like {@code sum}
 * @param divide how a mix for two bowls is divided
 * @param remarks tests that are open
 * @param waiting the client's wait for it, if any
 */
record MixRow(
        String bowl,
        Optional<String> personId,
        Instant begin,
        Instant mixEnd,
        Instant lifeEnds,
        Instant neededFrom,
        Instant neededTo,
        String start,
        String chair,
        String client,
        String use,
        String vessel,
        String sizeId,
        String ends,
        String zones,
        Optional<String> together,
        List<Weight> weights,
        Optional<String> sum,
        Optional<String> strength,
        Optional<String> divide,
        List<String> remarks,
        Optional<String> waiting) {
    MixRow {
        weights = List.copyOf(weights);
        remarks = List.copyOf(remarks);
    }

    /**
     * One weight.
     *
     * @param grams the weight with its unit
     * @param what what is weighed
     */
    record Weight(String grams, String what) {}
}
