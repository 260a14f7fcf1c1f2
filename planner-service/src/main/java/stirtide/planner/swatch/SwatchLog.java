package stirtide.planner.swatch;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.mixing.text.AmountText;

/** Compares the ratios of one lightener by the swatches a salon has tested. */
public final class SwatchLog {
    /** Swatches below which a line says so: a common-sense limit of this tool, no source. */
    private static final int FEW = 3;

    private SwatchLog() {}

    /**
     * Swatches of one ratio, strength and time.
     *
     * @param ratioThousandths ratio, in thousandths
     * @param strengthHundredths strength, in hundredths of a per cent by weight
     * @param minutes minutes until rinsed
     * @param swatches how many stand behind it, 1 or more
     * @param meanLiftHundredths mean levels lifted, in hundredths
     * @param spreadHundredths standard deviation (n - 1) of the lift, in hundredths; empty for a single swatch
     * @param sentence the same in words, with the smallest and the largest lift
     */
    public record Line(
            int ratioThousandths,
            int strengthHundredths,
            int minutes,
            int swatches,
            int meanLiftHundredths,
            Optional<Integer> spreadHundredths,
            String sentence) {}

    private record Key(int strength, int minutes, int ratio) {}

    /** One line for each strength, time and ratio tested with a lightener, in this order. */
    public static List<Line> of(String lightenerId, List<Swatch> swatches) {
        Map<Key, List<Swatch>> groups = new TreeMap<>(Comparator.comparingInt(Key::strength)
                .thenComparingInt(Key::minutes)
                .thenComparingInt(Key::ratio));
        for (Swatch swatch : swatches)
            if (swatch.lightenerId().equals(lightenerId))
                groups.computeIfAbsent(
                                new Key(swatch.strengthHundredths(), swatch.minutes(), swatch.ratioThousandths()),
                                key -> new ArrayList<>())
                        .add(swatch);
        List<Line> lines = new ArrayList<>();
        groups.forEach((key, group) -> lines.add(line(key, group)));
        return lines;
    }

    private static Line line(Key key, List<Swatch> group) {
        IntSummaryStatistics lift = group.stream().mapToInt(Swatch::liftTenths).summaryStatistics();
        int mean = (int) Math.round(lift.getAverage() * 10);
        Optional<Integer> spread = spread(group, lift.getAverage());
        String sentence = AmountText.ratio(key.ratio()) + " with " + AmountText.strength(key.strength()) + " for "
                + key.minutes() + " min lifted " + levels(mean) + range(lift) + ", " + group.size()
                + (group.size() == 1 ? " swatch" : " swatches")
                + (group.size() < FEW ? " only" : "");
        return new Line(key.ratio(), key.strength(), key.minutes(), group.size(), mean, spread, sentence);
    }

    private static Optional<Integer> spread(List<Swatch> group, double mean) {
        if (group.size() < 2) return Optional.empty();
        double squares = 0;
        for (Swatch swatch : group) squares += (swatch.liftTenths() - mean) * (swatch.liftTenths() - mean);
        return Optional.of((int) Math.round(Math.sqrt(squares / (group.size() - 1)) * 10));
    }

    private static String levels(int hundredths) {
        return BigDecimal.valueOf(hundredths, 2).setScale(1, RoundingMode.HALF_UP) + " levels";
    }

    private static String range(IntSummaryStatistics lift) {
        return lift.getCount() == 1 ? "" : " (" + tenths(lift.getMin()) + " to " + tenths(lift.getMax()) + ")";
    }

    private static String tenths(int tenths) {
        return BigDecimal.valueOf(tenths, 1).toPlainString();
    }
}
