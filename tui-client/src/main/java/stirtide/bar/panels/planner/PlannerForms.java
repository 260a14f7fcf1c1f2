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
import stirtide.bar.panels.services.BookingFields;
import stirtide.events.view.DayView;

/** Forms that ask the planner what something would do; nothing changes by asking. */
public final class PlannerForms {
    private static final String EARLIEST = "EARLIEST START";
    private static final FormPanel.Layout EARLIEST_LAYOUT = new FormPanel.Layout(60, 7, 0, 5, 12, 40);
    private static final String ASSISTANT = "ONE MORE ASSISTANT";
    private static final FormPanel.Layout ASSISTANT_LAYOUT = new FormPanel.Layout(60, 6, 0, 3, 8, 7);
    private static final Duration USUAL = Duration.ofHours(2);

    private PlannerForms() {}

    /** Asks for the earliest start of a client without a booking at which no other client waits longer. */
    public static Panel earliestStart(DayView day) {
        var fields = BookingFields.of(day);
        return new FormPanel(
                        EARLIEST,
                        EARLIEST_LAYOUT,
                        List.of(fields.service(), fields.chair(), fields.length(), fields.density()),
                        state -> new UiEffect.Ask(
                                new Inquiry.Ask.WalkIn(
                                        fields.menuId(),
                                        fields.length().text(),
                                        fields.density().text(),
                                        fields.chairNumber()),
                                new AdvicePanel(EARLIEST)))
                .keys("left, right choose   Enter next", "left, right choose   Enter asks");
    }

    /** Asks what one more assistant would do, from the salon's clock on, for two hours unless said otherwise. */
    public static Panel extraAssistant(DayView day, UiState now) {
        var from = TextField.time("from", now.now(), now.zone());
        var to = TextField.time("to", now.now().plus(USUAL), now.zone());
        return new FormPanel(ASSISTANT, ASSISTANT_LAYOUT, List.of(from, to), state -> {
                    Instant start = from.instant(day.date(), state.zone());
                    Instant end = to.instant(day.date(), state.zone());
                    return start.isBefore(end)
                            ? new UiEffect.Ask(new Inquiry.Ask.Help(start, end), new AdvicePanel(ASSISTANT))
                            : new UiEffect.Stay("to takes a time after " + from.text());
                })
                .note("asking changes no hours")
                .keys("Enter next", "Enter asks");
    }
}
