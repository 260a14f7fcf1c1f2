package stirtide.bar.panels.planner;

import java.util.List;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.panels.form.FormPanel;
import stirtide.bar.panels.services.BookingFields;
import stirtide.events.view.DayView;

/** Asks for the earliest start of a client without a booking at which no other client waits longer. */
public final class EarliestStartPanel {
    private static final String TITLE = "EARLIEST START";
    private static final FormPanel.Layout LAYOUT = new FormPanel.Layout(60, 7, 0, 5, 12, 40);

    private EarliestStartPanel() {}

    /** The choices of a day. */
    public static Panel of(DayView day) {
        var fields = BookingFields.of(day);
        return new FormPanel(
                        TITLE,
                        LAYOUT,
                        List.of(fields.service(), fields.chair(), fields.length(), fields.density()),
                        state -> new UiEffect.Ask(
                                new Inquiry.Ask.WalkIn(
                                        fields.menuId(),
                                        fields.length().text(),
                                        fields.density().text(),
                                        fields.chairNumber()),
                                new AdvicePanel(TITLE)))
                .keys("left, right choose   Enter next", "left, right choose   Enter asks");
    }
}
