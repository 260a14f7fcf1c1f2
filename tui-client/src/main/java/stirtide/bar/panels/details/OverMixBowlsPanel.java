package stirtide.bar.panels.details;

import java.util.ArrayList;
import java.util.List;
import stirtide.bar.model.BowlOverMix;
import stirtide.bar.model.OverMixBars;
import stirtide.bar.model.OverMixSelection;
import stirtide.bar.model.Panel;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.list.TextPanel;
import stirtide.bar.text.CodeText;
import stirtide.bar.text.WeightText;
import stirtide.events.view.DayView;
import stirtide.events.view.DoneBowl;

/** The bowls behind a bar of the day. */
public final class OverMixBowlsPanel {
    private OverMixBowlsPanel() {}

    /** The bowls that make up the bar of that name. */
    public static Panel of(OverMixSelection selection, String label) {
        return new TextPanel("BOWLS BEHIND  " + label, state -> lines(selection, label, state));
    }

    private static List<String> lines(OverMixSelection selection, String label, UiState state) {
        var lines = new ArrayList<String>();
        state.view()
                .ifPresent(view -> OverMixBars.bars(view, state.pages().past(), selection).stream()
                        .filter(bar -> bar.label().equals(label))
                        .flatMap(bar -> bar.bowls().stream())
                        .forEach(left -> lines.add(line(left, view, state))));
        return lines.isEmpty() ? List.of("no bowl any more") : lines;
    }

    private static String line(BowlOverMix left, DayView view, UiState state) {
        DoneBowl bowl = left.bowl();
        String day = left.date().equals(view.date()) ? "" : left.date() + " ";
        return day + state.minute(bowl.at()) + "  bowl " + bowl.bowl() + "  chair " + bowl.chair()
                + "  mixed " + WeightText.grams(bowl.mixedMilligrams()) + " g, over "
                + WeightText.grams(bowl.leftMilligrams()) + " g, " + CodeText.words(bowl.cause());
    }
}
