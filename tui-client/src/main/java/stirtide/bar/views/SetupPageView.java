package stirtide.bar.views;

import java.util.ArrayList;
import java.util.List;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.SetupRow;
import stirtide.bar.model.SetupRows;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;
import stirtide.events.view.SetupView;
import stirtide.events.view.StockCard;

/** What is in force on the day, row by row; below it what is still missing, or what is known of the picked row. */
final class SetupPageView {
    private static final int DETAIL_ROWS = 3;
    private static final int NAME_COLUMNS = 12;

    private SetupPageView() {}

    /** Draws between the alarm rows and the footer. */
    static void draw(Pane pane, UiState scene) {
        if (scene.pages().setup().inForce().isEmpty()) {
            pane.put(2, 1, "asking the service what is in force", Style.DIM);
            return;
        }
        SetupView setup = scene.pages().setup().inForce().get();
        List<SetupRow> rows = SetupRows.of(setup.setup());
        int picked = Math.min(scene.pages().setup().row(), rows.size() - 1);
        int height = pane.height() - DETAIL_ROWS - 1;
        // A third of the rows stays in sight above the picked one.
        int first = Math.max(0, Math.min(picked - height * 2 / 3, rows.size() - height));
        for (int i = 0; i < height && first + i < rows.size(); i++)
            row(pane, i, rows.get(first + i), first + i == picked);
        int hidden = rows.size() - first - height;
        pane.rule(height);
        if (hidden > 0) pane.put(2, height, " " + hidden + " more below ", Style.DIM);
        int at = height + 1;
        for (String line : below(setup, rows.get(picked), scene, pane.width()))
            if (at < pane.height()) pane.put(0, at++, line, Style.TEXT);
    }

    private static void row(Pane pane, int at, SetupRow row, boolean isPicked) {
        Style style = pane.select(at, isPicked, row.isHeading() ? Style.STRONG : Style.TEXT);
        if (row.isHeading()) {
            pane.put(2, at, row.part().name(), style);
            pane.fit(2 + NAME_COLUMNS, at, pane.width() - 3 - NAME_COLUMNS, row.text(), isPicked ? style : Style.DIM);
        } else {
            int indent = row.within().isPresent() ? 7 : 4;
            pane.fit(indent, at, pane.width() - indent - 1, row.text(), style);
        }
    }

    private static List<String> below(SetupView setup, SetupRow picked, UiState scene, int columns) {
        if (!setup.missing().isEmpty()) {
            String left = setup.missing().size() + " still missing before a client can be booked. Next: ";
            return LineWrap.wrap(
                    left + setup.missing().get(0) + " Pick its heading: n adds; on a row Enter changes.", columns);
        }
        var lines = new ArrayList<String>();
        scene.view()
                .ifPresent(view -> view.stock().stream()
                        .filter(card -> card.productId().equals(picked.id()))
                        .map(StockCard::sentence)
                        .forEach(sentence -> lines.addAll(LineWrap.wrap(sentence, columns))));
        if (picked.part() == SetupRow.Part.MENU) lines.addAll(learned(picked, scene, columns));
        if (lines.isEmpty()) lines.add("complete: 1 goes to the bar, n there books a client; changes are planned anew");
        return lines;
    }

    // The planner's own lines about learned and pinned grams stand on the bowls to mix.
    private static List<String> learned(SetupRow picked, UiState scene, int columns) {
        if (picked.within().isEmpty()) return List.of();
        String zone = picked.text().substring(0, Math.max(0, picked.text().indexOf(':')));
        return scene.view().stream()
                .flatMap(view -> view.queue().stream())
                .filter(bowl -> bowl.bowl().zones().contains(zone))
                .flatMap(bowl -> bowl.allowances().stream())
                .filter(line -> line.contains(zone))
                .limit(1)
                .flatMap(line -> LineWrap.wrap(line, columns).stream())
                .toList();
    }
}
