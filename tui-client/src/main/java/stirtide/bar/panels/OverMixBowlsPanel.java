package stirtide.bar.panels;

import java.util.ArrayList;
import java.util.List;
import stirtide.bar.model.BowlOverMix;
import stirtide.bar.model.OverMixBars;
import stirtide.bar.model.OverMixSelection;
import stirtide.bar.model.UiState;
import stirtide.bar.text.TimeText;
import stirtide.bar.text.WeightText;
import stirtide.events.view.DayView;

/** The bowls behind a bar of the day. */
public final class OverMixBowlsPanel extends TextPanel {
    private final OverMixSelection pick;
    private final String label;

    /** The bowls that make up the bar of that name. */
    public OverMixBowlsPanel(OverMixSelection pick, String label) {
        this.pick = pick;
        this.label = label;
    }

    @Override
    public String title() {
        return "BOWLS BEHIND  " + label;
    }

    @Override
    protected List<String> sentences(UiState scene) {
        var lines = new ArrayList<String>();
        scene.view()
                .ifPresent(view -> OverMixBars.bars(view, scene.pages().past(), pick).stream()
                        .filter(bar -> bar.label().equals(label))
                        .flatMap(bar -> bar.bowls().stream())
                        .forEach(left -> lines.add(line(left, view, scene))));
        return lines.isEmpty() ? List.of("no bowl any more") : lines;
    }

    private static String line(BowlOverMix left, DayView view, UiState scene) {
        DayView.DoneBowl bowl = left.bowl();
        String day = left.date().equals(view.date()) ? "" : left.date() + " ";
        return day + TimeText.minute(bowl.at(), scene.zone()) + "  bowl " + bowl.bowl() + "  chair " + bowl.chair()
                + "  mixed " + WeightText.grams(bowl.mixedMilligrams()) + " g, over "
                + WeightText.grams(bowl.leftMilligrams()) + " g, " + OverMixBars.cause(bowl.cause());
    }
}
