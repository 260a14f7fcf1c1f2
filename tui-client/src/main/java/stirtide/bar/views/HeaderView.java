package stirtide.bar.views;

import java.util.Locale;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.FollowedClock;
import stirtide.bar.model.LinkStatus;
import stirtide.bar.model.Operator;
import stirtide.bar.model.UiState;
import stirtide.bar.text.TimeText;
import stirtide.events.view.DayView;

/** One row: view and salon, the salon's clock, how fresh the picture is, who works here. */
final class HeaderView {
    private HeaderView() {}

    static void draw(Pane row, UiState scene) {
        String salon = scene.view().map(DayView::salonName).orElse("");
        int column = names(row, scene.pages().page());
        row.fit(column + 1, 0, row.width() / 2 - 13 - column, salon, Style.TEXT);
        if (scene.view().isPresent()) clock(row, scene);
        String person = person(scene);
        row.put(row.width() - person.length(), 0, person, Style.TEXT);
        String link = link(scene);
        boolean fresh =
                scene.link().state() == LinkStatus.State.LIVE || scene.link().state() == LinkStatus.State.CONNECTING;
        row.put(row.width() - person.length() - 2 - link.length(), 0, link, fresh ? Style.DIM : Style.MEDIUM);
    }

    // The view on show in capitals, the others as their keys call them.
    private static int names(Pane row, KeyContext shown) {
        int column = 0;
        for (KeyContext page : KeyContext.VIEWS) {
            boolean here = page == shown;
            String name = here ? page.name() : page.name().toLowerCase(Locale.ROOT);
            row.put(column, 0, name, here ? Style.STRONG : Style.DIM);
            column += name.length() + 1;
        }
        return column;
    }

    private static void clock(Pane row, UiState scene) {
        String time = TimeText.clock(scene.now(), scene.zone());
        int column = row.width() / 2 - 10;
        row.put(column, 0, time, Style.STRONG);
        if (scene.ratePermille() != FollowedClock.REAL) {
            row.put(column + time.length() + 1, 0, rate(scene.ratePermille()), Style.DIM);
        }
    }

    private static String rate(int permille) {
        if (permille == 0) return "stopped";
        return permille % FollowedClock.REAL == 0
                ? "x" + permille / FollowedClock.REAL
                : String.format(Locale.ROOT, "x%.2f", permille / (double) FollowedClock.REAL);
    }

    private static String person(UiState scene) {
        String name = scene.name(scene.operator().personId());
        if (scene.operator().signOn() == Operator.SignOn.NEEDED) return "0 sign on";
        if (!scene.operator().mayWrite()) return name.isEmpty() ? "read only" : Pane.cut(name, 10) + " (read)";
        return Pane.cut(name, 12);
    }

    private static String link(UiState scene) {
        long age = scene.link().ageSeconds();
        return switch (scene.link().state()) {
            case LIVE -> "live " + TimeText.age(age);
            case CONNECTING -> "connecting";
            case STALE -> "STALE " + TimeText.age(age);
            case LOST -> "NO LINK " + TimeText.age(age);
        };
    }
}
