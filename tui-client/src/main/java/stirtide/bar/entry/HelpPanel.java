package stirtide.bar.entry;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import stirtide.bar.frame.Pane;
import stirtide.bar.frame.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.scene.Advice;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;
import stirtide.bar.words.TimeText;
import stirtide.events.view.DayView;

/** Asks what one more assistant at the bar would do for some time. */
public final class HelpPanel extends FieldsPanel {
    private static final int COLUMNS = 60;
    private static final Duration USUAL = Duration.ofHours(2);

    private final DayView day;
    private final TextField from;
    private final TextField to;

    private HelpPanel(DayView day, TextField from, TextField to) {
        super(List.of(from, to));
        this.day = day;
        this.from = from;
        this.to = to;
    }

    /** From the salon's clock on, for two hours unless said otherwise. */
    public static HelpPanel of(DayView day, Scene scene) {
        return new HelpPanel(
                day, time("from", scene.now(), scene), time("to", scene.now().plus(USUAL), scene));
    }

    private static TextField time(String label, Instant at, Scene scene) {
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
    public void draw(Pane inside, Scene scene) {
        drawFields(inside, 0, 8, 7);
        inside.put(1, 2, "nobody's hours change by asking", Style.DIM);
        drawFoot(inside, 3, "Enter " + (onLastField() ? "asks" : "next"));
    }

    @Override
    PanelAnswer complete(Key enter, Scene scene) {
        Instant start = at(from, scene);
        Instant end = at(to, scene);
        if (!start.isBefore(end)) return stay("to takes a time after " + from.text());
        return new PanelAnswer.AskPlanner(new Advice.Ask.Help(start, end), new AdvicePanel("ONE MORE ASSISTANT"));
    }

    private Instant at(TextField field, Scene scene) {
        return day.date()
                .atTime(LocalTime.parse(field.text()))
                .atZone(scene.zone())
                .toInstant();
    }
}
