package stirtide.events.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * A developer (hydrogen peroxide) on the shelf.
 *
 * @param developerId short id, unique in the salon
 * @param name name shown on screens
 * @param strengthHundredths hydrogen peroxide in hundredths of a per cent by weight: 600 is 6 %, shown as 20 vol
 * @param packMilligrams content of one pack
 * @param packPrice price of one pack in the salon's currency
 * @param countedMilligrams what was counted on the shelf, empty when it was not counted
 */
@RecordBuilder
public record Developer(
        String developerId,
        String name,
        int strengthHundredths,
        int packMilligrams,
        BigDecimal packPrice,
        Optional<Integer> countedMilligrams)
        implements DeveloperBuilder.With {}
