package stirtide.events.view;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * Where the grams of a day come from and what they cost. Money is in the salon's currency.
 *
 * @param revision newest event the view knows
 * @param currency ISO 4217 code
 * @param fixedPermille how often in a thousand allowances are to be enough, if that is fixed; else the costs say
 * @param fixedBy MANAGER or SETUP when it is fixed, empty text otherwise
 * @param allowances one line for each zone still to be begun
 * @param pins zones of the menu with a pin or a reset in force
 * @param prices one line a product
 * @param bowls cost of each bowl, begun ones first, then those to come
 * @param mixes what a gram of mix costs at the thickest and the thinnest ratio the directions permit
 * @param waiting what the waits of the plan cost
 * @param shopping what to buy for tomorrow, one sentence a product, empty when nothing is known to be missing
 */
public record GramsView(
        long revision,
        String currency,
        Optional<Integer> fixedPermille,
        String fixedBy,
        List<AllowanceCard> allowances,
        List<PinCard> pins,
        List<PriceCard> prices,
        List<BowlCostCard> bowls,
        List<MixCostCard> mixes,
        WaitingCard waiting,
        List<String> shopping) {

    /**
     * Grams planned for a zone of a service: {@code medianMilligrams} on all its bowls, {@code safetyMilligrams} on the
     * last bowl of the run. {@code source} is MENU, LEARNED, PINNED or LAST_TIME; {@code fractionSentence} says where the
     * fraction comes from.
     */
    public record AllowanceCard(
            int service,
            int chair,
            String clientRef,
            String menuId,
            String zone,
            int plannedMilligrams,
            int medianMilligrams,
            int safetyMilligrams,
            int visits,
            int setAside,
            String source,
            int fractionPermille,
            String fractionSentence,
            String sentence) {}

    /** A rule of a manager; {@code resetOn} is a date or empty text. */
    public record PinCard(String menuId, String zone, Optional<Integer> pinnedMilligrams, String resetOn) {}

    /** Price of a product by its pack. What a gram costs has two decimals more than the currency, everywhere in this view. */
    public record PriceCard(
            String productId, String name, int packMilligrams, BigDecimal packPrice, BigDecimal pricePerGram) {}

    /** Cost of what is or will be in a bowl; {@code begun} says which. */
    public record BowlCostCard(
            String bowl, int service, boolean begun, int mixedMilligrams, BigDecimal cost, BigDecimal costPerGram) {}

    /**
     * The same grams of mix at two ratios. {@code difference} is what the thicker mix costs more, negative when it is the
     * cheaper.
     */
    public record MixCostCard(
            String lightenerId,
            String technique,
            int thickRatioThousandths,
            int thinRatioThousandths,
            int milligrams,
            BigDecimal thickCost,
            BigDecimal thinCost,
            BigDecimal difference,
            String sentence) {}

    /** Minutes clients wait by the plan and what they cost; without a price of waiting both prices are 0. */
    public record WaitingCard(int minutes, BigDecimal minutePrice, BigDecimal cost, String sentence) {}
}
