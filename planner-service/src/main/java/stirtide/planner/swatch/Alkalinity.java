package stirtide.planner.swatch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Compares two strip readings. pH is the negative decimal logarithm of hydrogen ion activity (IUPAC Gold Book, P04524),
 * so one unit is ten times. A strip shows no more than that: nothing about strength, lift, damage or time.
 */
public sealed interface Alkalinity {
    /** What a strip cannot show, given with every comparison. */
    String LIMITS =
            "A strip tells how alkaline a mix is, not how strong it is, how far it lifts or whether it is safe.";

    /**
     * One mix is more alkaline.
     *
     * @param times how many times, from the readings as they stand
     * @param atLeast how many times at the least, by the steps of the charts
     * @param atMost how many times at the most
     * @param sentence the same in words
     */
    record MoreAlkaline(BigDecimal times, BigDecimal atLeast, BigDecimal atMost, String sentence)
            implements Alkalinity {}

    /** The comparison in words. */
    String sentence();

    /** The strips cannot distinguish the mixes. */
    record Indistinguishable(String sentence) implements Alkalinity {}

    /** How many times more alkaline the first mix is than the second, or the second than the first. */
    static Alkalinity compare(StripReading first, StripReading second) {
        int apart = Math.abs(first.tenths() - second.tenths());
        int blur = (first.stepTenths() + second.stepTenths() + 1) / 2;
        if (apart < blur)
            return new Indistinguishable("The strips cannot tell " + first.shown() + " from " + second.shown()
                    + ": their charts have steps too wide for it. " + LIMITS);
        StripReading higher = first.tenths() > second.tenths() ? first : second;
        StripReading lower = higher == first ? second : first;
        BigDecimal times = timesOf(apart);
        BigDecimal least = timesOf(apart - blur);
        BigDecimal most = timesOf(apart + blur);
        return new MoreAlkaline(
                times,
                least,
                most,
                higher.shown() + " is about " + round(times) + " times as alkaline as " + lower.shown() + ", between "
                        + round(least) + " and " + round(most) + " times by the charts. " + LIMITS);
    }

    /** Ten to the power of this many tenths. */
    private static BigDecimal timesOf(int tenths) {
        return new BigDecimal(Math.pow(10, tenths / 10.0), new MathContext(6, RoundingMode.HALF_UP));
    }

    private static String round(BigDecimal times) {
        return times.round(new MathContext(2, RoundingMode.HALF_UP))
                .stripTrailingZeros()
                .toPlainString();
    }
}
