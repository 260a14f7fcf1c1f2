package stirtide.bar.entry;

import java.util.ArrayList;
import java.util.List;
import stirtide.bar.grams.DayGrams;
import stirtide.bar.scene.DayPick;
import stirtide.bar.scene.Left;
import stirtide.bar.scene.Scene;
import stirtide.bar.words.TimeText;
import stirtide.bar.words.WeightText;
import stirtide.events.view.DayView;

/** The bowls behind a bar of the day. */
public final class BehindPanel extends ReadingPanel {
    private final DayPick pick;
    private final String label;

    /** The bowls that make up the bar of that name. */
    public BehindPanel(DayPick pick, String label) {
        this.pick = pick;
        this.label = label;
    }

    @Override
    public String title() {
        return "BOWLS BEHIND  " + label;
    }

    @Override
    protected List<String> sentences(Scene scene) {
        var lines = new ArrayList<String>();
        scene.view()
                .ifPresent(view -> DayGrams.bars(view, scene.pages().past(), pick).stream()
                        .filter(bar -> bar.label().equals(label))
                        .flatMap(bar -> bar.bowls().stream())
                        .forEach(left -> lines.add(line(left, view, scene))));
        return lines.isEmpty() ? List.of("no bowl any more") : lines;
    }

    private static String line(Left left, DayView view, Scene scene) {
        DayView.DoneBowl bowl = left.bowl();
        String day = left.date().equals(view.date()) ? "" : left.date() + " ";
        return day + TimeText.minute(bowl.at(), scene.zone()) + "  bowl " + bowl.bowl() + "  chair " + bowl.chair()
                + "  mixed " + WeightText.grams(bowl.mixedMilligrams()) + " g, over "
                + WeightText.grams(bowl.leftMilligrams()) + " g, " + DayGrams.cause(bowl.cause());
    }
}
