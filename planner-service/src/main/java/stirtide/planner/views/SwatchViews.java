package stirtide.planner.views;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.SwatchTest;
import stirtide.events.view.SwatchView;
import stirtide.events.view.SwatchView.LightenerCard;
import stirtide.events.view.SwatchView.StripCard;
import stirtide.mixing.text.AmountText;
import stirtide.planner.day.state.Day;
import stirtide.planner.swatch.Alkalinity;
import stirtide.planner.swatch.StripReading;
import stirtide.planner.swatch.SwatchLog;

/** Makes the view of swatches and strips, earlier days and today together. */
public final class SwatchViews {
    private static final Comparator<MixStrip> BY_MIX = Comparator.comparingInt(MixStrip::strengthHundredths)
            .thenComparing(MixStrip::ratioThousandths)
            .thenComparing(MixStrip::on)
            .thenComparing(MixStrip::phTenths);

    private SwatchViews() {}

    /** The view of an opened day. */
    public static SwatchView of(Day day) {
        List<SwatchTest> swatches = swatches(day);
        List<MixStrip> strips = strips(day);
        TreeSet<String> lighteners = new TreeSet<>();
        day.opened().directions().forEach(product -> lighteners.add(product.lightenerId()));
        swatches.forEach(swatch -> lighteners.add(swatch.lightenerId()));
        strips.forEach(strip -> lighteners.add(strip.lightenerId()));
        return new SwatchView(
                day.revision(),
                lighteners.stream().map(id -> card(day, id, swatches, strips)).toList(),
                Alkalinity.LIMITS);
    }

    private static List<SwatchTest> swatches(Day day) {
        List<SwatchTest> all =
                new ArrayList<>(day.opened().learned().remembered().swatches());
        all.addAll(day.ledger().notes().swatches());
        return all;
    }

    private static List<MixStrip> strips(Day day) {
        List<MixStrip> all = new ArrayList<>(day.opened().learned().remembered().strips());
        all.addAll(day.ledger().notes().strips());
        return all.stream().sorted(BY_MIX).toList();
    }

    private static LightenerCard card(Day day, String lightenerId, List<SwatchTest> swatches, List<MixStrip> strips) {
        List<MixStrip> own = strips.stream()
                .filter(strip -> strip.lightenerId().equals(lightenerId))
                .toList();
        return new LightenerCard(
                lightenerId,
                ProductNames.lightener(day, lightenerId),
                SwatchLog.of(lightenerId, swatches),
                own.stream().map(SwatchViews::strip).toList(),
                comparisons(own));
    }

    private static StripCard strip(MixStrip strip) {
        return new StripCard(
                strip.on().toString(),
                strip.ratioThousandths(),
                strip.strengthHundredths(),
                strip.phTenths(),
                strip.stepTenths(),
                mix(strip) + ": " + StripReading.of(strip).shown());
    }

    private static List<String> comparisons(List<MixStrip> strips) {
        List<String> sentences = new ArrayList<>();
        for (int i = 1; i < strips.size(); i++) {
            MixStrip one = strips.get(i - 1);
            MixStrip other = strips.get(i);
            sentences.add(mix(one) + " and " + mix(other) + ": "
                    + Alkalinity.compare(StripReading.of(one), StripReading.of(other))
                            .sentence());
        }
        return sentences;
    }

    private static String mix(MixStrip strip) {
        return AmountText.ratio(strip.ratioThousandths()) + " with " + AmountText.strength(strip.strengthHundredths());
    }
}
