package stirtide.bar.controller;

import java.util.List;
import java.util.Optional;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.OverMixBars;
import stirtide.bar.model.OverMixSelection;
import stirtide.bar.model.UiState;
import stirtide.bar.text.BatchText;
import stirtide.bar.text.BowlText;
import stirtide.bar.text.TimeText;
import stirtide.bar.text.WeightText;
import stirtide.events.view.DayView;

/** The picked row as one line of plain text, for other programs. */
final class SelectedRowText {
    private SelectedRowText() {}

    static Optional<String> of(UiState scene) {
        return scene.view().flatMap(view -> of(view, scene));
    }

    private static Optional<String> of(DayView view, UiState scene) {
        if (scene.pages().page() == KeyContext.FLOOR) {
            return scene.pages().floor().in(view).map(card -> service(card, scene));
        }
        if (scene.pages().page() == KeyContext.DAY) return bar(view, scene);
        return scene.picks().onLive()
                ? scene.picks().liveIn(view).map(bowl -> live(bowl, scene))
                : scene.picks().queuedIn(view).map(bowl -> queued(bowl, scene));
    }

    private static String service(DayView.ServiceCard card, UiState scene) {
        return "service " + card.service() + ", chair " + card.chair() + ", " + card.clientRef() + ", "
                + card.menuName() + ", " + TimeText.minute(card.plannedStart(), scene.zone()) + " to "
                + TimeText.minute(card.plannedEnd(), scene.zone()) + ", waits " + card.waitMinutes() + " min";
    }

    private static Optional<String> bar(DayView view, UiState scene) {
        OverMixSelection pick = scene.pages().day();
        List<OverMixBars.Bar> bars = OverMixBars.bars(view, scene.pages().past(), pick);
        if (bars.isEmpty()) return Optional.empty();
        OverMixBars.Bar bar = bars.get(Math.min(pick.row(), bars.size() - 1));
        return Optional.of(
                view.date() + ", over-mixed, " + bar.label() + ", " + WeightText.grams(bar.milligrams()) + " g");
    }

    private static String live(DayView.LiveBowl bowl, UiState scene) {
        return "bowl " + bowl.bowl() + ", chair " + bowl.chair() + ", " + bowl.clientRef() + ", "
                + String.join(
                        " and ",
                        scene.view().map(view -> BowlText.zones(bowl, view)).orElse(bowl.zones())) + ", life ends "
                + TimeText.minute(bowl.lifeEnds(), scene.zone());
    }

    private static String queued(DayView.QueuedBowl bowl, UiState scene) {
        String mix = bowl.batch()
                .map(batch -> "one mix with bowl "
                        + BatchText.other(batch, bowl.bowl().bowl()) + " or alone, ")
                .orElse("");
        return "bowl " + bowl.bowl().bowl() + ", chair " + bowl.bowl().chair() + ", " + bowl.clientRef() + ", " + mix
                + WeightText.grams(bowl.bowl().formula().lightenerMilligrams()) + " g " + bowl.lightenerName()
                + ", makes " + WeightText.grams(bowl.bowl().formula().totalMilligrams()) + " g, start "
                + TimeText.minute(bowl.bowl().mixStart(), scene.zone());
    }
}
