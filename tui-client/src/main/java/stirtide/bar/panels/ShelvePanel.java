package stirtide.bar.panels;

import java.util.List;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.AlarmList;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.panels.form.ChoiceField;
import stirtide.bar.panels.form.FormPanel;
import stirtide.bar.text.LineWrap;
import stirtide.events.view.AlarmCard;

/** Shelves a row of alarms for some minutes, at this terminal only. It comes back by itself. */
public final class ShelvePanel {
    private static final FormPanel.Layout LAYOUT = new FormPanel.Layout(60, 7, 4, 5, 11, 6);
    private static final int MOST_LINES = 3;

    private ShelvePanel() {}

    /** Shelves a row that is not of high priority. */
    public static Panel of(AlarmList.Row row) {
        var minutes = new ChoiceField("minutes", List.of("5", "10", "15"), 0);
        String more = row.alarms().size() > 1 ? " (and " + (row.alarms().size() - 1) + " more of its kind)" : "";
        List<String> lines = LineWrap.wrap(row.first().sentence() + more, LAYOUT.columns() - 2);
        List<String> ids = row.alarms().stream().map(AlarmCard::id).toList();
        return new FormPanel(
                        "SHELVE",
                        LAYOUT,
                        List.of(minutes),
                        state -> new UiEffect.ShelveAlarms(ids, Integer.parseInt(minutes.text())))
                .keys("", "left, right choose   Enter shelves here")
                .header((inside, state) -> {
                    for (int i = 0; i < Math.min(MOST_LINES, lines.size()); i++)
                        inside.put(1, i, lines.get(i), Style.TEXT);
                });
    }
}
