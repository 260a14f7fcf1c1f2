package stirtide.bar.views;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stirtide.bar.canvas.BlockDigits;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.MixWeights;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.services.WalkInPanel;
import stirtide.bar.text.BatchText;
import stirtide.bar.text.ClientTestText;
import stirtide.bar.text.CountText;
import stirtide.bar.text.TimeText;
import stirtide.bar.text.WeightText;
import stirtide.events.view.DayView;
import stirtide.mixing.text.AmountText;
import stirtide.mixing.weighing.Ratios;

/** The next bowl: when, for whom, how many grams of what. */
final class NextMixView {
    private static final int RIGHT = 33;
    private static final int GRAMS_WIDTH = 9;

    private NextMixView() {}

    static void draw(Pane pane, UiState scene) {
        Optional<DayView.QueuedBowl> next =
                scene.view().flatMap(view -> view.queue().stream().findFirst());
        if (next.isEmpty()) {
            pane.put(0, 0, "NEXT MIX", Style.STRONG);
            pane.put(2, 2, scene.view().map(NextMixView::nothing).orElse("no picture of the day yet"), Style.DIM);
            return;
        }
        boolean roomy = pane.height() > 10;
        draw(pane, next.get(), scene);
        if (roomy) roomy(pane, next.get(), scene);
        else recipe(pane.part(RIGHT, 1, pane.width() - RIGHT, pane.height() - 2), next.get(), false);
        caution(pane, pane.height() - 1, next.get(), scene);
    }

    private static String nothing(DayView view) {
        if (!view.services().isEmpty()) return "nothing to mix";
        return "nothing to mix: " + WalkInPanel.whyNot(view).orElse("no client is booked, n books one");
    }

    private static void draw(Pane pane, DayView.QueuedBowl next, UiState scene) {
        boolean isPicked = isPicked(next, scene);
        pane.put(0, 0, (isPicked ? "> " : "  ") + "NEXT MIX", Style.STRONG);
        String client = next.clientRef().isEmpty() ? "" : "  " + next.clientRef();
        String who = next.batch()
                .map(NextMixView::pair)
                .orElse("bowl " + next.bowl().bowl() + "   chair " + next.bowl().chair() + client + "   "
                        + String.join(", ", next.bowl().zones()));
        int from = pane.height() > 10 ? 13 : RIGHT;
        pane.fit(from, 0, pane.width() - from, who, isPicked ? Style.PICKED : Style.STRONG);
        countdown(pane, next.bowl().mixStart(), scene);
    }

    private static boolean isPicked(DayView.QueuedBowl next, UiState scene) {
        return !scene.picks().onLive()
                && scene.view()
                        .flatMap(view -> scene.picks().queuedIn(view))
                        .map(picked -> picked.bowl().bowl().equals(next.bowl().bowl()))
                        .orElse(false);
    }

    private static void countdown(Pane pane, Instant start, UiState scene) {
        String left = TimeText.left(start, scene.now());
        boolean late = left.startsWith("+");
        Style style = late ? Style.MEDIUM : Style.STRONG;
        int row = pane.height() > 10 ? 2 : 1;
        BlockDigits.tall(pane, 2, row, left.replace(" h", "h"), style);
        pane.put(2, row + BlockDigits.TALL_ROWS, startText(start, late, scene), late ? style : Style.TEXT);
    }

    private static String startText(Instant start, boolean late, UiState scene) {
        return (late ? "▲ LATE, was to start " : "start at ") + scene.minute(start);
    }

    private static void roomy(Pane pane, DayView.QueuedBowl next, UiState scene) {
        Pane side = pane.part(38, 3, pane.width() - 38, 4);
        side.fit(0, 0, side.width(), mixer(next, scene), Style.TEXT);
        side.fit(0, 1, side.width(), "scale: " + next.bowl().scaleId(), Style.DIM);
        side.fit(0, 2, side.width(), size(next), Style.DIM);
        recipe(pane.part(2, 8, pane.width() - 2, 6), next, true);
    }

    private static String mixer(DayView.QueuedBowl next, UiState scene) {
        return next.bowl().personId().map(id -> scene.name(id) + " mixes").orElse("the stylist mixes");
    }

    private static String pair(DayView.BatchCard batch) {
        var first = batch.mixedIn();
        var second = batch.pouredInto();
        return "one mix, two bowls  " + first.bowl() + " + " + second.bowl() + "  chairs " + first.chair() + " + "
                + second.chair();
    }

    private static String size(DayView.QueuedBowl next) {
        return next.batch()
                .map(batch -> "bowls " + batch.mixedIn().bowlSizeId() + ", "
                        + batch.pouredInto().bowlSizeId())
                .orElse("bowl size: " + next.bowl().bowlSizeId());
    }

    private static void recipe(Pane pane, DayView.QueuedBowl next, boolean roomy) {
        MixWeights card = MixWeights.of(next);
        grams(pane, 0, card.lightenerMilligrams(), next.lightenerName());
        int row = 1;
        for (DayView.PartCard part : card.parts())
            grams(pane, row++, part.milligrams(), WeightText.liquid(part.strengthHundredths(), part.name()));
        String blend = card.parts().size() > 1 ? "   blend " + AmountText.percent(card.strengthHundredths()) : "";
        int poured = Ratios.thousandths(Math.max(1, card.lightenerMilligrams()), card.developerMilligrams());
        String ratio = "ratio " + AmountText.ratio(poured) + blend + "   makes "
                + WeightText.grams(card.totalMilligrams()) + " g";
        pane.fit(0, row++, pane.width(), ratio, Style.TEXT);
        if (next.batch().isPresent())
            pane.fit(0, row++, pane.width(), BatchText.shares(next.batch().get()), Style.STRONG);
        long life =
                Duration.between(next.bowl().mixStart(), next.bowl().lifeEnds()).toMinutes();
        String window = "life " + life + " min   directions " + AmountText.ratio(card.lowestRatioThousandths()) + " to "
                + AmountText.ratio(card.highestRatioThousandths());
        if (roomy || row < pane.height()) pane.fit(0, row, pane.width(), window, Style.DIM);
    }

    private static void grams(Pane pane, int row, int milligrams, String text) {
        pane.right(GRAMS_WIDTH - 2, row, GRAMS_WIDTH - 2, WeightText.grams(milligrams), Style.STRONG);
        pane.put(GRAMS_WIDTH - 1, row, "g", Style.DIM);
        pane.fit(GRAMS_WIDTH + 2, row, pane.width() - GRAMS_WIDTH - 2, text, Style.TEXT);
    }

    // Half a sentence of a caution says less than that there are some.
    private static void caution(Pane pane, int row, DayView.QueuedBowl next, UiState scene) {
        List<String> cautions = next.cautions();
        String tests = scene.view()
                .map(view -> ClientTestText.shortly(view, next.bowl().service()))
                .orElse("");
        if (!cautions.isEmpty() || !tests.isEmpty()) {
            String tail = "  Enter: read";
            int room = pane.width() - 2 - tail.length();
            String product = tests.isEmpty() ? "first " + next.lightenerName() + " today, " : "; ";
            String text = "! " + tests + (cautions.isEmpty() ? "" : product + CountText.of(cautions.size(), "caution"));
            pane.put(2, row, Pane.cut(text, room) + tail, Style.STRONG);
        } else if (next.bowl().waitMinutes() > 0) {
            pane.put(2, row, "the client waits " + next.bowl().waitMinutes() + " min for it   Enter: why", Style.TEXT);
        } else if (pane.height() <= 10) {
            pane.fit(
                    2,
                    row,
                    pane.width() - 2,
                    mixer(next, scene) + ", scale " + next.bowl().scaleId() + ", " + size(next),
                    Style.DIM);
        }
    }
}
