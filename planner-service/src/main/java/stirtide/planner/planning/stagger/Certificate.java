package stirtide.planner.planning.stagger;

import org.jspecify.annotations.Nullable;

/**
 * A proof that no plan keeps a claim, in a form that can be followed from the problem alone.
 *
 * @param claim what is refuted
 * @param root the first step
 */
public record Certificate(Claim claim, Step root) {

    /** One step of a proof about the plans that are still possible. */
    public sealed interface Step permits Priced, Split, Swept {}

    /**
     * Prices on minutes of mixing. Each run's cheapest path, less the price of all mixers, bounds every plan from below. If
     * the bound exceeds what the claim allows (or a run has no path), nothing is left to show. Else every start whose
     * cheapest path would lift the bound above the claim is struck out, and the proof goes on with the rest.
     *
     * @param delayWeight price of a minute of wait, 0 or more
     * @param mixWeight price of a unit of the second level, 0 or more
     * @param ageWeight price of a minute of age, 0 or more
     * @param prices what a minute of mixing costs
     * @param next the rest of the proof, null where these prices close it
     */
    public record Priced(
            long delayWeight,
            long mixWeight,
            long ageWeight,
            MinutePrices prices,
            @Nullable Step next) implements Step {}

    /**
     * Two cases that leave nothing out: the bowl that feeds the given minute of a run is mixed from at most the given start,
     * or from a later one.
     *
     * @param runIndex place of the run in the problem
     * @param minute minute of the day, inside the run
     * @param mixStartMinute minute of the day
     * @param atMost proof for starts up to it
     * @param later proof for later starts
     */
    public record Split(int runIndex, int minute, int mixStartMinute, Step atMost, Step later) implements Step {}

    /**
     * Prices as in {@link Priced}, with which the plans are followed minute by minute: a state is how far each run is fed and
     * how long mixers are at work; the bowls of a run are mixed in the order of their use. It is dropped when its cost, the cheapest rest of each run and the price of the mixers
     * yet to come exceed what the claim allows. No state is left at the end. Only for days on which all bowls of a run cost
     * the same.
     *
     * @param delayWeight price of a minute of wait, 0 or more
     * @param mixWeight price of a unit of the second level, 0 or more
     * @param ageWeight price of a minute of age, 0 or more
     * @param prices what a minute of mixing costs
     * @param people whether the states distinguish the people at work, not only how many are
     */
    public record Swept(long delayWeight, long mixWeight, long ageWeight, MinutePrices prices, boolean people)
            implements Step {}
}
