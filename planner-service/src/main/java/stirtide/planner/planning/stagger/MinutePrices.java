package stirtide.planner.planning.stagger;

import java.util.Arrays;

/** Integer prices of minutes of the day; minutes that are not listed cost nothing. */
public final class MinutePrices {
    private final int fromMinute;
    private final int[] prices;

    private MinutePrices(int fromMinute, int[] prices) {
        this.fromMinute = fromMinute;
        this.prices = prices;
    }

    /**
     * Copies prices of 0 or more.
     *
     * @param fromMinute minute of the day of the first price
     * @param prices one for each minute from there
     */
    public static MinutePrices of(int fromMinute, int... prices) {
        int from = 0;
        int to = prices.length;
        while (from < to && prices[from] == 0) {
            from++;
        }
        while (to > from && prices[to - 1] == 0) {
            to--;
        }
        return new MinutePrices(fromMinute + from, Arrays.copyOfRange(prices, from, to));
    }

    /** First minute of the day that is listed. */
    public int fromMinute() {
        return fromMinute;
    }

    /** First minute of the day after the last listed one. */
    public int toMinute() {
        return fromMinute + prices.length;
    }

    /** Price of a minute of the day. */
    public int at(int minute) {
        return minute < fromMinute || minute >= toMinute() ? 0 : prices[minute - fromMinute];
    }
}
