package stirtide.events.plan;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stirtide.events.formula.BowlFormula;

/**
 * One bowl still to be mixed.
 *
 * @param bowl id, service number and letter: {@code "7b"}
 * @param service service number
 * @param run number of the run within the service, from 1
 * @param chair chair number
 * @param zones zones it feeds, in order
 * @param mixStart when mixing starts; the working life runs from here
 * @param mixEnd when mixing ends
 * @param neededFrom first use at the chair
 * @param neededTo last use at the chair, never after {@code lifeEnds}
 * @param lifeEnds when the mix must no longer be applied
 * @param personId assistant who mixes; empty when the stylist mixes at the chair's turn
 * @param scaleId scale to use
 * @param bowlSizeId bowl to use
 * @param neededMilligrams grams the zones need from this bowl
 * @param residueMilligrams grams that stay on bowl and brush
 * @param formula what to weigh
 * @param waitMinutes minutes the client waits for this bowl
 */
@RecordBuilder
public record PlannedBowl(
        String bowl,
        int service,
        int run,
        int chair,
        List<String> zones,
        Instant mixStart,
        Instant mixEnd,
        Instant neededFrom,
        Instant neededTo,
        Instant lifeEnds,
        Optional<String> personId,
        String scaleId,
        String bowlSizeId,
        int neededMilligrams,
        int residueMilligrams,
        BowlFormula formula,
        int waitMinutes)
        implements PlannedBowlBuilder.With {
    public PlannedBowl {
        zones = List.copyOf(zones);
    }
}
