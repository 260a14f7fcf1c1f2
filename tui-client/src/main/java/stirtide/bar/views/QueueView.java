package stirtide.bar.views;

import java.util.List;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.MixWeights;
import stirtide.bar.model.UiState;
import stirtide.bar.text.BatchText;
import stirtide.bar.text.ClientTestText;
import stirtide.bar.text.WeightText;
import stirtide.events.view.DayView;

/** Bowls after the next one. The first row of the pane is its rule, with the heading on it. */
final class QueueView {
    private static final int ZONES = 24;
    private static final int LEAST_ZONES = 10;
    private static final String MARK_WORDS = " ! cautions or tests: Enter ";

    private QueueView() {}

    static void draw(Pane pane, UiState scene, boolean broad) {
        List<DayView.QueuedBowl> queue = scene.view().map(DayView::queue).orElse(List.of());
        List<DayView.QueuedBowl> later = queue.subList(Math.min(1, queue.size()), queue.size());
        pane.put(2, 0, " AFTER THAT ", Style.STRONG);
        int rows = pane.height() - 1;
        int picked = pickedIndex(later, scene);
        int shown = later.size() > rows ? rows - 1 : rows;
        int first = Math.max(0, Math.min(picked - shown + 1, later.size() - shown));
        for (int row = 0; row < Math.min(shown, later.size()); row++)
            draw(pane, 1 + row, later.get(first + row), scene, broad, first + row == picked);
        if (later.stream().skip(first).limit(shown).anyMatch(bowl -> isMarked(bowl, scene)))
            pane.put(pane.width() - MARK_WORDS.length() - 2, 0, MARK_WORDS, Style.DIM);
        int more = later.size() - first - shown;
        if (later.size() > rows) pane.put(2, rows, more + " more later", Style.DIM);
    }

    private static int pickedIndex(List<DayView.QueuedBowl> later, UiState scene) {
        if (scene.picks().onLive()) return -1;
        for (int i = 0; i < later.size(); i++) {
            if (later.get(i).bowl().bowl().equals(scene.picks().queued())) return i;
        }
        return -1;
    }

    private static void draw(
            Pane pane, int row, DayView.QueuedBowl bowl, UiState scene, boolean broad, boolean isPicked) {
        Style style = pane.select(row, isPicked, Style.TEXT);
        pane.put(2, row, bowl.bowl().bowl(), style)
                .put(7, row, "chair " + bowl.bowl().chair(), style);
        pane.fit(16, row, 7, bowl.clientRef(), style);
        String zones = bowl.batch()
                .map(batch -> mix(batch, bowl.bowl().bowl()))
                .orElse(String.join(", ", bowl.bowl().zones()));
        int end = pane.width() - 7;
        String each = grams(bowl, false);
        // A blend part by part would leave no room for the zones.
        boolean cramped = !broad && end - 4 - each.length() - 1 - ZONES < Math.min(LEAST_ZONES, zones.length());
        String grams = cramped ? grams(bowl, true) : each;
        boolean marked = isMarked(bowl, scene);
        if (broad) {
            pane.fit(ZONES, row, 19, zones, style);
            pane.right(end - 8, row, 26, grams, style);
            pane.put(end - 6, row, marked ? "!" : "", style);
        } else {
            pane.fit(ZONES, row, Math.max(0, end - 4 - grams.length() - 1 - ZONES), zones, style);
            pane.right(end - 3, row, 26, grams, style).put(end - 1, row, marked ? "!" : "", style);
        }
        pane.put(end + 1, row, scene.minute(bowl.bowl().mixStart()), style);
    }

    private static boolean isMarked(DayView.QueuedBowl bowl, UiState scene) {
        return !bowl.cautions().isEmpty()
                || scene.view()
                        .filter(view -> !ClientTestText.open(view, bowl.bowl().service())
                                .isEmpty())
                        .isPresent();
    }

    private static String mix(DayView.BatchCard batch, String bowl) {
        String other = BatchText.other(batch, bowl);
        return BatchText.isMixedIn(batch, bowl) ? "with " + other : "from " + other;
    }

    /** What is to be weighed; of the second bowl of one mix, what is poured into it. */
    private static String grams(DayView.QueuedBowl bowl, boolean liquidsInAll) {
        var second = bowl.batch()
                .filter(batch -> !BatchText.isMixedIn(batch, bowl.bowl().bowl()));
        if (second.isPresent())
            return "poured " + WeightText.grams(second.get().pouredInto().milligrams()) + " g";
        MixWeights card = MixWeights.of(bowl);
        var text = new StringBuilder(WeightText.grams(card.lightenerMilligrams()));
        if (liquidsInAll)
            text.append(" + ").append(WeightText.grams(card.totalMilligrams() - card.lightenerMilligrams()));
        else card.parts().forEach(part -> text.append(" + ").append(WeightText.grams(part.milligrams())));
        return text.append(" g").toString();
    }
}
