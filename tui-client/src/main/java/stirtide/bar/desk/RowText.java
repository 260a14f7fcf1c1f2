package stirtide.bar.desk;

import java.util.List;
import java.util.Optional;
import stirtide.bar.entry.BatchWords;
import stirtide.bar.grams.DayGrams;
import stirtide.bar.keys.Place;
import stirtide.bar.scene.DayPick;
import stirtide.bar.scene.Scene;
import stirtide.bar.words.BowlWords;
import stirtide.bar.words.TimeText;
import stirtide.bar.words.WeightText;
import stirtide.events.view.DayView;

/** The picked row as one line of plain text, for other programs. */
final class RowText {
    private RowText() {}

    static Optional<String> of(Scene scene) {
        return scene.view().flatMap(view -> of(view, scene));
    }

    private static Optional<String> of(DayView view, Scene scene) {
        if (scene.pages().page() == Place.FLOOR) {
            return scene.pages().floor().in(view).map(card -> service(card, scene));
        }
        if (scene.pages().page() == Place.DAY) return bar(view, scene);
        return scene.picks().onLive()
                ? scene.picks().liveIn(view).map(bowl -> live(bowl, scene))
                : scene.picks().queuedIn(view).map(bowl -> queued(bowl, scene));
    }

    private static String service(DayView.ServiceCard card, Scene scene) {
        return "service " + card.service() + ", chair " + card.chair() + ", " + card.clientRef() + ", "
                + card.menuName() + ", " + TimeText.minute(card.plannedStart(), scene.zone()) + " to "
                + TimeText.minute(card.plannedEnd(), scene.zone()) + ", waits " + card.waitMinutes() + " min";
    }

    private static Optional<String> bar(DayView view, Scene scene) {
        DayPick pick = scene.pages().day();
        List<DayGrams.Bar> bars = DayGrams.bars(view, scene.pages().past(), pick);
        if (bars.isEmpty()) return Optional.empty();
        DayGrams.Bar bar = bars.get(Math.min(pick.row(), bars.size() - 1));
        return Optional.of(
                view.date() + ", over-mixed, " + bar.label() + ", " + WeightText.grams(bar.milligrams()) + " g");
    }

    private static String live(DayView.LiveBowl bowl, Scene scene) {
        return "bowl " + bowl.bowl() + ", chair " + bowl.chair() + ", " + bowl.clientRef() + ", "
                + String.join(
                        " and ",
                        scene.view().map(view -> BowlWords.zones(bowl, view)).orElse(bowl.zones())) + ", life ends "
                + TimeText.minute(bowl.lifeEnds(), scene.zone());
    }

    private static String queued(DayView.QueuedBowl bowl, Scene scene) {
        String mix = bowl.batch()
                .map(batch -> "one mix with bowl "
                        + BatchWords.other(batch, bowl.bowl().bowl()) + " or alone, ")
                .orElse("");
        return "bowl " + bowl.bowl().bowl() + ", chair " + bowl.bowl().chair() + ", " + bowl.clientRef() + ", " + mix
                + WeightText.grams(bowl.bowl().formula().lightenerMilligrams()) + " g " + bowl.lightenerName()
                + ", makes " + WeightText.grams(bowl.bowl().formula().totalMilligrams()) + " g, start "
                + TimeText.minute(bowl.bowl().mixStart(), scene.zone());
    }
}
