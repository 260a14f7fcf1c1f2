package stirtide.events.plan;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The plan of a day from one instant on. What has happened already is not in it.
 *
 * @param basedOnRevision newest event the plan knows
 * @param asOf time of that event; nothing in the plan starts before it
 * @param rounds rounds of improvement the planner was granted
 * @param bowls bowls still to be mixed, by start of mixing, then bowl id
 * @param services what the clients can expect, by service number
 * @param waits why clients wait, where they do
 * @param notes things that could not be planned as wished, each with its reason
 * @param totals the plan in figures
 * @param changes what differs from the plan on show before, in words
 * @param batches pairs of these bowls that may be one mix, by start of mixing; no bowl is in two of them
 * @param roundsToCome of a first plan, drawn at once: rounds with which a better one is looked for; empty of any other
 */
@RecordBuilder
public record Plan(
        long basedOnRevision,
        Instant asOf,
        int rounds,
        List<PlannedBowl> bowls,
        List<PlannedService> services,
        List<WaitReason> waits,
        List<PlanNote> notes,
        PlanTotals totals,
        List<String> changes,

        @JsonInclude(JsonInclude.Include.NON_EMPTY) @JsonSetter(nulls = Nulls.AS_EMPTY)
        List<PlannedBatch> batches,

        @JsonInclude(JsonInclude.Include.NON_EMPTY) Optional<Integer> roundsToCome)
        implements PlanBuilder.With {
    /** Plans recorded before there were batches and first plans have none of either. */
    public Plan {
        bowls = List.copyOf(bowls);
        services = List.copyOf(services);
        waits = List.copyOf(waits);
        notes = List.copyOf(notes);
        changes = List.copyOf(changes);
        batches = batches == null ? List.of() : List.copyOf(batches);
        roundsToCome = roundsToCome == null ? Optional.empty() : roundsToCome;
    }

    /** The same plan as a first one, after which a better one is looked for with so many rounds. */
    public Plan first(int more) {
        return withRoundsToCome(Optional.of(more));
    }

    /** This first plan after so many rounds in which no better one was found, with what they proved. */
    public Plan kept(int granted, Optional<Integer> waitBound, Optional<Integer> bowlBound, List<String> proof) {
        return PlanBuilder.builder(this)
                .rounds(granted)
                .totals(totals.proven(waitBound, bowlBound, proof, totals.bowlReasons()))
                .roundsToCome(Optional.empty())
                .build();
    }

    /** Whether clients and the bar do the same by both plans, minute by minute and gram by gram. */
    public boolean sameWork(Plan other) {
        return bowls.equals(other.bowls) && services.equals(other.services) && batches.equals(other.batches);
    }

    /** The batch a bowl is in, if it is in one. */
    public Optional<PlannedBatch> batchOf(String bowl) {
        return batches.stream().filter(batch -> batch.bowlIds().contains(bowl)).findFirst();
    }

    /** When the mix of a bowl of this plan is to be begun: that of its batch, if it is in one. */
    public Instant beginOf(PlannedBowl bowl) {
        return batchOf(bowl.bowl()).map(PlannedBatch::mixStart).orElse(bowl.mixStart());
    }

    /**
     * Why clients wait in a stretch of time.
     *
     * @param from start of the stretch
     * @param to end of the stretch
     * @param neededMinutes minutes of mixing the stretch needs
     * @param availableMinutes minutes of mixing the people on duty can give in it
     * @param services services that wait
     * @param sentence the same in words
     */
    public record WaitReason(
            Instant from,
            Instant to,
            int neededMinutes,
            int availableMinutes,
            List<Integer> services,
            String sentence) {
        public WaitReason {
            services = List.copyOf(services);
        }
    }

    /**
     * Something that could not be planned as wished.
     *
     * @param kind stable code such as {@code "STYLIST_MIXES"}, {@code "NO_FORMULA"}, {@code "RINSE_EARLY"}
     * @param service service it concerns
     * @param sentence what and why, and what would help
     */
    public record PlanNote(String kind, int service, String sentence) {}

    /**
     * The plan in figures.
     *
     * @param waitMinutes minutes clients wait, all together
     * @param bowlCount bowls still to be mixed
     * @param mixedMilligrams grams of those bowls
     * @param overMixMilligrams grams of those bowls beyond need and residue
     * @param ageMinutes minutes from start of mixing to first use, all bowls together
     * @param waitBound proven least wait, if known
     * @param bowlBound proven least number of bowls of plans that wait no longer, if known
     * @param mixedBound proven least milligrams mixed by plans that wait no longer, if known
     * @param ageBound proven least age of plans that wait no longer and lose no more grams, if known
     * @param proof in words what is proven best, or how far from the best the plan is at most
     * @param bowlReasons stretches of time that force more than one bowl, by service, then start
     */
    @RecordBuilder
    public record PlanTotals(
            int waitMinutes,
            int bowlCount,
            int mixedMilligrams,
            int overMixMilligrams,
            int ageMinutes,
            Optional<Integer> waitBound,
            Optional<Integer> bowlBound,
            Optional<Integer> mixedBound,
            Optional<Integer> ageBound,
            @JsonSetter(nulls = Nulls.AS_EMPTY) List<String> proof,

            @JsonInclude(JsonInclude.Include.NON_EMPTY) @JsonSetter(nulls = Nulls.AS_EMPTY)
            List<BowlReason> bowlReasons) {
        /** Plans recorded before the last four were known have none of them. */
        public PlanTotals {
            mixedBound = mixedBound == null ? Optional.empty() : mixedBound;
            ageBound = ageBound == null ? Optional.empty() : ageBound;
            proof = proof == null ? List.of() : List.copyOf(proof);
            bowlReasons = bowlReasons == null ? List.of() : List.copyOf(bowlReasons);
        }

        /** Figures of which nothing is proved. */
        public PlanTotals(int waitMinutes, int bowlCount, int mixedMilligrams, int overMixMilligrams, int ageMinutes) {
            this(
                    waitMinutes,
                    bowlCount,
                    mixedMilligrams,
                    overMixMilligrams,
                    ageMinutes,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    List.of());
        }

        /** The same figures with what is proven about waits and bowls. */
        public PlanTotals proven(
                Optional<Integer> leastWait,
                Optional<Integer> leastBowls,
                List<String> sentences,
                List<BowlReason> reasons) {
            return PlanPlanTotalsBuilder.builder(this)
                    .waitBound(leastWait)
                    .bowlBound(leastBowls)
                    .proof(sentences)
                    .bowlReasons(reasons)
                    .build();
        }
    }
}
