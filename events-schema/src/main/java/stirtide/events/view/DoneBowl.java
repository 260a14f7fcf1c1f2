package stirtide.events.view;

import java.math.BigDecimal;
import java.time.Instant;

/**
 * A closed bowl. {@code cause} is empty text for a bowl that was used up, {@code stylistName} for a booking without
 * a stylist; {@code leftCost} is what the grams left cost by the pack prices, in the salon's currency, rounded half up to
 * its smallest coin.
 */
public record DoneBowl(
        String bowl,
        int service,
        int chair,
        Instant at,
        int mixedMilligrams,
        int leftMilligrams,
        String cause,
        String lightenerName,
        String stylistName,
        BigDecimal leftCost) {}
