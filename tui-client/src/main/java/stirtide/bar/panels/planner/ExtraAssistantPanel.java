package stirtide.bar.panels.planner;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.form.FormPanel;
import stirtide.bar.panels.form.TextField;
import stirtide.events.view.DayView;

/** Asks what one more assistant at the bar would do for some time. */
public final class ExtraAssistantPanel {
    private static final String TITLE = "ONE MORE ASSISTANT";
    private static final FormPanel.Layout LAYOUT = new FormPanel.Layout(60, 6, 0, 3, 8, 7);
    private static final Duration USUAL = Duration.ofHours(2);

    private ExtraAssistantPanel() {}

    /** From the salon's clock on, for two hours unless said otherwise. */
    public static Panel of(DayView day, UiState now) {
        var from = TextField.time("from", now.now(), now.zone());
        var to = TextField.time("to", now.now().plus(USUAL), now.zone());
        return new FormPanel(TITLE, LAYOUT, List.of(from, to), state -> {
                    Instant start = from.instant(day.date(), state.zone());
                    Instant end = to.instant(day.date(), state.zone());
                    return start.isBefore(end)
                            ? new UiEffect.Ask(new Inquiry.Ask.Help(start, end), new AdvicePanel(TITLE))
                            : new UiEffect.Stay("to takes a time after " + from.text());
                })
                .note("asking changes no hours")
                .keys("Enter next", "Enter asks");
    }
}
