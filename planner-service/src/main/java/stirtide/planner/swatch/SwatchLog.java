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
import stirtide.events.setup.SwatchTest;
import stirtide.events.view.SwatchView.LiftCard;
import stirtide.mixing.text.AmountText;

/** Compares the ratios of one lightener by the swatches a salon has tested. */
public final class SwatchLog {
    /** Swatches below which a line says so: a common-sense limit of this tool, no source. */
    private static final int FEW = 3;

    private SwatchLog() {}

    private record Key(int strength, int minutes, int ratio) {}

    /** What is wrong with the figures of a swatch, with the ranges; empty when nothing is. */
    public static Optional<String> objection(SwatchTest test) {
        if (test.ratioThousandths() < 1 || test.strengthHundredths() < 0 || test.minutes() < 1)
            return Optional.of("ratio and minutes must be above 0, strength 0 or more: " + test.ratioThousandths()
                    + ", " + test.minutes() + ", " + test.strengthHundredths());
        int before = test.levelBeforeTenths();
        int after = test.levelAfterTenths();
        return Math.min(before, after) < 10 || Math.max(before, after) > 100
                ? Optional.of("levels must be 1 to 10: " + before / 10.0 + ", " + after / 10.0)
                : Optional.empty();
    }

    private static int liftTenths(SwatchTest swatch) {
        return swatch.levelAfterTenths() - swatch.levelBeforeTenths();
    }

    /** One line for each strength, time and ratio tested with a lightener, in this order. */
    public static List<LiftCard> of(String lightenerId, List<SwatchTest> swatches) {
        Map<Key, List<SwatchTest>> groups = new TreeMap<>(Comparator.comparingInt(Key::strength)
                .thenComparingInt(Key::minutes)
                .thenComparingInt(Key::ratio));
        for (SwatchTest swatch : swatches)
            if (swatch.lightenerId().equals(lightenerId))
                groups.computeIfAbsent(
                                new Key(swatch.strengthHundredths(), swatch.minutes(), swatch.ratioThousandths()),
                                key -> new ArrayList<>())
                        .add(swatch);
        List<LiftCard> lines = new ArrayList<>();
        groups.forEach((key, group) -> lines.add(line(key, group)));
        return lines;
    }

    private static LiftCard line(Key key, List<SwatchTest> group) {
        IntSummaryStatistics lift =
                group.stream().mapToInt(SwatchLog::liftTenths).summaryStatistics();
        int mean = (int) Math.round(lift.getAverage() * 10);
        Optional<Integer> spread = spread(group, lift.getAverage());
        String sentence = AmountText.ratio(key.ratio()) + " with " + AmountText.strength(key.strength()) + " for "
                + key.minutes() + " min lifted " + levels(mean) + range(lift) + ", " + group.size()
                + (group.size() == 1 ? " swatch" : " swatches")
                + (group.size() < FEW ? " only" : "");
        return new LiftCard(key.ratio(), key.strength(), key.minutes(), group.size(), mean, spread, sentence);
    }

    private static Optional<Integer> spread(List<SwatchTest> group, double mean) {
        if (group.size() < 2) return Optional.empty();
        double squares = 0;
        for (SwatchTest swatch : group) squares += (liftTenths(swatch) - mean) * (liftTenths(swatch) - mean);
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
