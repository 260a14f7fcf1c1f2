package stirtide.events.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;

/**
 * What a salon remembers of earlier days beside the grams.
 *
 * @param visits what was mixed for clients, oldest first
 * @param swatches test swatches, oldest first
 * @param strips pH strips of test mixes, oldest first
 * @param fractionPermille how often in a thousand allowances are to be enough, if a manager has set it; else the costs say
 */
@RecordBuilder
public record SalonMemory(
        List<PastVisit> visits, List<SwatchTest> swatches, List<MixStrip> strips, Optional<Integer> fractionPermille)
        implements SalonMemoryBuilder.With {
    /** Nothing is remembered. */
    public static final SalonMemory NONE = new SalonMemory(List.of(), List.of(), List.of(), Optional.empty());

    public SalonMemory {
        visits = List.copyOf(visits);
        swatches = List.copyOf(swatches);
        strips = List.copyOf(strips);
    }
}
