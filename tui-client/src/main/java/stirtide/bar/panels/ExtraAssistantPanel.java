package stirtide.bar.panels;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.TimeText;
import stirtide.events.view.DayView;

/** Asks what one more assistant at the bar would do for some time. */
public final class ExtraAssistantPanel extends FieldsPanel {
    private static final int COLUMNS = 60;
    private static final Duration USUAL = Duration.ofHours(2);

    private final DayView day;
    private final TextField from;
    private final TextField to;

    private ExtraAssistantPanel(DayView day, TextField from, TextField to) {
        super(List.of(from, to));
        this.day = day;
        this.from = from;
        this.to = to;
    }

    /** From the salon's clock on, for two hours unless said otherwise. */
    public static ExtraAssistantPanel of(DayView day, UiState scene) {
        return new ExtraAssistantPanel(
                day, time("from", scene.now(), scene), time("to", scene.now().plus(USUAL), scene));
    }

    private static TextField time(String label, Instant at, UiState scene) {
        return new TextField(
                label,
                5,
                letter -> letter == ':' || Character.isDigit(letter),
                "([01]\\d|2[0-3]):[0-5]\\d",
                "a time such as 14:05",
                TimeText.minute(at, scene.zone()));
    }

    @Override
    public String title() {
        return "ONE MORE ASSISTANT";
    }

    @Override
    public int columns() {
        return COLUMNS;
    }

    @Override
    public int rows() {
        return 6;
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        drawFields(inside, 0, 8, 7);
        inside.put(1, 2, "nobody's hours change by asking", Style.DIM);
        drawFoot(inside, 3, "Enter " + (onLastField() ? "asks" : "next"));
    }

    @Override
    UiEffect complete(Key enter, UiState scene) {
        Instant start = at(from, scene);
        Instant end = at(to, scene);
        if (!start.isBefore(end)) return stay("to takes a time after " + from.text());
        return new UiEffect.AskPlanner(new Inquiry.Ask.Help(start, end), new AdvicePanel("ONE MORE ASSISTANT"));
    }

    private Instant at(TextField field, UiState scene) {
        return day.date()
                .atTime(LocalTime.parse(field.text()))
                .atZone(scene.zone())
                .toInstant();
    }
}
