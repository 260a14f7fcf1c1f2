package stirtide.bar.views;

import java.time.Duration;
import java.util.List;
import stirtide.bar.canvas.BlockDigits;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.UiState;
import stirtide.bar.text.BatchText;
import stirtide.bar.text.BowlText;
import stirtide.bar.text.CodeText;
import stirtide.bar.text.TimeText;
import stirtide.bar.text.WeightText;
import stirtide.events.view.DayView;
import stirtide.mixing.text.AmountText;

/** Live bowls with what is left of their lives: rows in a small terminal, cards in a large one. */
final class LiveBowlsView {
    private static final int CARD_ROWS = 5;
    private static final int TIGHT_CARD_ROWS = 4;

    private LiveBowlsView() {}

    static void rows(Pane pane, UiState scene) {
        List<DayView.LiveBowl> live = live(scene);
        pane.put(2, 0, " LIVE BOWLS " + count(live, scene) + " ", Style.STRONG);
        int shown = shown(live.size(), pane.height() - 1);
        int first = first(live, shown, scene);
        for (int row = 0; row < Math.min(shown, live.size()); row++) row(pane, 1 + row, live.get(first + row), scene);
        more(pane, live.size() - shown);
    }

    // Without a picture of the day nothing is known, not even that there are none.
    private static String count(List<DayView.LiveBowl> live, UiState scene) {
        if (scene.view().isEmpty()) return "?";
        return live.isEmpty() ? "none" : String.valueOf(live.size());
    }

    static void cards(Pane pane, UiState scene) {
        List<DayView.LiveBowl> live = live(scene);
        pane.put(0, 0, "LIVE BOWLS  " + count(live, scene), Style.STRONG);
        int room = pane.height() - 2;
        int cardRows = live.size() * CARD_ROWS <= room ? CARD_ROWS : TIGHT_CARD_ROWS;
        int fitting = room / cardRows;
        int shown = Math.min(fitting, live.size());
        int first = first(live, shown, scene);
        for (int i = 0; i < shown; i++)
            card(pane.part(0, 1 + i * cardRows, pane.width(), cardRows), live.get(first + i), scene);
        more(pane, live.size() - shown);
    }

    private static List<DayView.LiveBowl> live(UiState scene) {
        return scene.view().map(DayView::live).orElse(List.of());
    }

    private static int shown(int bowls, int rows) {
        return bowls > rows ? rows - 1 : rows;
    }

    private static int first(List<DayView.LiveBowl> live, int shown, UiState scene) {
        for (int i = 0; i < live.size(); i++) {
            if (isPicked(live.get(i), scene)) return Math.max(0, Math.min(i - shown + 1, live.size() - shown));
        }
        return 0;
    }

    private static void more(Pane pane, int hidden) {
        if (hidden > 0) pane.put(2, pane.height() - 1, hidden + " more: Tab and the arrows", Style.DIM);
    }

    private static boolean isPicked(DayView.LiveBowl bowl, UiState scene) {
        return scene.picks().onLive()
                && scene.view()
                        .flatMap(view -> scene.picks().liveIn(view))
                        .map(picked -> picked.bowl().equals(bowl.bowl()))
                        .orElse(false);
    }

    private static void row(Pane pane, int row, DayView.LiveBowl bowl, UiState scene) {
        Style text = pane.select(row, isPicked(bowl, scene), Style.TEXT);
        Style state = state(bowl, scene, text);
        pane.put(1, row, symbol(bowl, scene), state);
        pane.put(3, row, bowl.bowl(), text).put(8, row, "chair " + bowl.chair(), text);
        pane.fit(17, row, 7, bowl.clientRef(), text);
        pane.fit(25, row, 14, zones(bowl, scene), text);
        pane.fit(40, row, 8, CodeText.words(bowl.stage()), text);
        pane.right(56, row, 7, TimeText.left(bowl.lifeEnds(), scene.now()), state);
        int barColumns = Math.max(8, pane.width() - 70);
        bar(pane, 57, row, barColumns, bowl, scene, state);
        pane.put(57 + barColumns + 1, row, word(bowl, scene), state == text ? text : state);
    }

    private static void card(Pane pane, DayView.LiveBowl bowl, UiState scene) {
        boolean isPicked = isPicked(bowl, scene);
        Style state = state(bowl, scene, Style.TEXT);
        String client = bowl.clientRef().isEmpty() ? "" : " " + bowl.clientRef();
        String title = symbol(bowl, scene) + (isPicked ? ">" : " ") + "bowl " + bowl.bowl() + "   chair " + bowl.chair()
                + client + "   " + zones(bowl, scene);
        String word = word(bowl, scene);
        Style head = isPicked ? Style.PICKED : state == Style.TEXT ? Style.STRONG : state;
        pane.fit(0, 0, pane.width() - word.length() - 2, title, head);
        pane.right(pane.width() - 1, 0, 12, word, state);
        BlockDigits.small(
                pane,
                2,
                1,
                TimeText.left(bowl.lifeEnds(), scene.now()).replace(" h", "h"),
                state == Style.TEXT ? Style.STRONG : state);
        int column = 25;
        pane.put(column, 1, CodeText.words(bowl.stage()) + ", " + bowl.personName(), Style.DIM);
        bar(pane, column, 2, pane.width() - column - 2, bowl, scene, state);
        pane.fit(column, 3, pane.width() - column, "of " + bowl.lifeMinutes() + " min; " + ratio(bowl), Style.DIM);
    }

    private static String zones(DayView.LiveBowl bowl, UiState scene) {
        return String.join(
                ", ", scene.view().map(view -> BowlText.zones(bowl, view)).orElse(bowl.zones()));
    }

    private static String ratio(DayView.LiveBowl bowl) {
        String mix = bowl.batch()
                .map(batch -> "one mix with " + BatchText.other(batch, bowl.bowl()) + "; ")
                .orElse("");
        return mix
                + bowl.weighed()
                        .map(weighed -> "weighed " + AmountText.ratio(weighed.ratioThousandths())
                                + (weighed.insideDirections() ? "" : ", OUTSIDE"))
                        .orElse("planned " + AmountText.ratio(bowl.planned().wantedRatioThousandths()) + ", to weigh");
    }

    private static Style state(DayView.LiveBowl bowl, UiState scene, Style normal) {
        if (scene.isPast(bowl)) return Style.HIGH;
        boolean outside = bowl.weighed().isPresent() && !bowl.weighed().get().insideDirections();
        return scene.isLow(bowl) || outside ? Style.MEDIUM : normal;
    }

    private static String symbol(DayView.LiveBowl bowl, UiState scene) {
        Style state = state(bowl, scene, Style.TEXT);
        return state == Style.HIGH ? "■" : state == Style.MEDIUM ? "▲" : " ";
    }

    private static String word(DayView.LiveBowl bowl, UiState scene) {
        if (scene.isPast(bowl)) return "PAST LIFE";
        if (bowl.weighed().isPresent() && !bowl.weighed().get().insideDirections()) return "OUTSIDE";
        if (scene.isLow(bowl)) return "LOW LIFE";
        var mix = bowl.batch().filter(batch -> !batch.divided());
        if (mix.isPresent()) {
            if (!BatchText.isMixedIn(mix.get(), bowl.bowl()))
                return "in " + mix.get().mixedIn().bowl();
            return mix.get().weighed().isPresent() ? "divide it" : "weigh it";
        }
        return bowl.weighed()
                .map(weighed -> WeightText.grams(weighed.lightenerMilligrams() + weighed.developerMilligrams()) + " g")
                .orElse("weigh it");
    }

    // Used life, in whole cells, rounded so that a full bar means that the life is over.
    private static void bar(
            Pane pane, int column, int row, int columns, DayView.LiveBowl bowl, UiState scene, Style style) {
        long whole =
                Math.max(1, Duration.between(bowl.mixStart(), bowl.lifeEnds()).toMillis());
        long used = Duration.between(bowl.mixStart(), scene.now()).toMillis();
        int full = (int) Math.max(0, Math.min(columns, used * columns / whole));
        pane.put(column, row, "▓".repeat(full) + "·".repeat(columns - full), style);
    }
}
