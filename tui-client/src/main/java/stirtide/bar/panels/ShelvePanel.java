package stirtide.bar.panels;

import java.util.List;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.model.AlarmList;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;
import stirtide.events.view.DayView;

/** Puts a row of alarms away for some minutes, at this terminal only. It comes back by itself. */
public final class ShelvePanel extends FieldsPanel {
    private static final int COLUMNS = 60;
    private static final List<String> MINUTES = List.of("5", "10", "15");

    private final AlarmList.Row row;
    private final ChoiceField minutes;

    private ShelvePanel(AlarmList.Row row, ChoiceField minutes) {
        super(List.of(minutes));
        this.row = row;
        this.minutes = minutes;
    }

    /** Shelves a row that is not of high priority. */
    public static ShelvePanel of(AlarmList.Row row) {
        return new ShelvePanel(row, new ChoiceField("minutes", MINUTES, 0));
    }

    @Override
    public String title() {
        return "SHELVE";
    }

    @Override
    public int columns() {
        return COLUMNS;
    }

    @Override
    public int rows() {
        return 7;
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        int at = 0;
        String more = row.alarms().size() > 1 ? " (and " + (row.alarms().size() - 1) + " more of its kind)" : "";
        for (String line : LineWrap.wrap(row.first().sentence() + more, COLUMNS - 2))
            if (at < 3) inside.put(1, at++, line, Style.TEXT);
        drawFields(inside, 4, 11, 6);
        drawFoot(inside, 5, "left, right choose   Enter shelves here");
    }

    @Override
    UiEffect complete(Key enter, UiState scene) {
        List<String> ids = row.alarms().stream().map(DayView.AlarmCard::id).toList();
        return new UiEffect.Shelve(ids, Integer.parseInt(minutes.text()));
    }
}
