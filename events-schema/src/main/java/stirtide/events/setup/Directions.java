package stirtide.events.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What the maker of a lightener permits. The maker's leaflet always wins over this record.
 *
 * @param lightenerId short id, unique in the salon
 * @param name name shown on screens
 * @param form powder, clay or cream, as the salon words it
 * @param workingLifeMinutes minutes from the first contact with developer until the mix must no longer be applied
 * @param mixMinutes minutes of an assistant's time one mix takes
 * @param waterPermitted whether developer may be thinned with water
 * @param techniques what is permitted for each technique, at least one
 * @param packMilligrams content of one pack
 * @param packPrice price of one pack in the salon's currency
 * @param countedMilligrams what was counted on the shelf, empty when it was not counted
 * @param strandTestHours hours before the service by which a strand test must be done, if demanded
 * @param patchTestHours hours before the service by which a patch test must be done, if demanded
 * @param cautions cautions of the leaflet, shown with the first bowl of the product
 */
@RecordBuilder
public record Directions(
        String lightenerId,
        String name,
        String form,
        int workingLifeMinutes,
        int mixMinutes,
        boolean waterPermitted,
        List<TechniqueRule> techniques,
        int packMilligrams,
        BigDecimal packPrice,
        Optional<Integer> countedMilligrams,
        Optional<Integer> strandTestHours,
        Optional<Integer> patchTestHours,
        List<String> cautions)
        implements DirectionsBuilder.With {
    public Directions {
        techniques = List.copyOf(techniques);
        cautions = List.copyOf(cautions);
    }

    /**
     * What is permitted for one technique.
     *
     * @param technique name of the technique, such as {@code "foil"}
     * @param onScalp whether the mix touches the scalp
     * @param lowestRatioThousandths smallest grams of developer per gram of lightener, in thousandths: 1:1.5 is 1500
     * @param highestRatioThousandths largest grams of developer per gram of lightener, in thousandths
     * @param highestStrengthHundredths strongest developer permitted, in hundredths of a per cent by weight
     * @param longestProcessingMinutes minutes from first application of a zone to its rinse that must never be passed
     */
    public record TechniqueRule(
            String technique,
            boolean onScalp,
            int lowestRatioThousandths,
            int highestRatioThousandths,
            int highestStrengthHundredths,
            int longestProcessingMinutes) {}
}
