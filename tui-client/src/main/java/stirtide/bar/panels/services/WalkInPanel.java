package stirtide.bar.panels.services;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.form.FormPanel;
import stirtide.bar.panels.form.TextField;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.view.DayView;

/** Books a client who walks in. */
public final class WalkInPanel {
    private static final FormPanel.Layout LAYOUT = new FormPanel.Layout(62, 10, 0, 7, 14, 34);
    private static final long STEP_SECONDS = 300;

    private WalkInPanel() {}

    /** A walk-in on this day; the start is the next five minutes by the salon's clock. */
    public static Panel of(DayView day, UiState state) {
        long seconds = -Math.floorDiv(-state.now().getEpochSecond(), STEP_SECONDS) * STEP_SECONDS;
        return form(day, state, BookingFields.of(day), Instant.ofEpochSecond(seconds));
    }

    /** A walk-in at the start the planner found for what was asked. */
    public static Panel at(DayView day, UiState state, Inquiry.Ask.WalkIn asked, Instant start) {
        var fields = BookingFields.of(day);
        fields.pick(asked);
        return form(day, state, fields, start);
    }

    /** A panel that leads to a booking, or why no client can be booked. */
    public static UiEffect opened(DayView day, Supplier<Panel> panel) {
        return whyNot(day).<UiEffect>map(UiEffect.Notify::new).orElseGet(() -> new UiEffect.Open(panel.get()));
    }

    /** Why no client can be booked on this day, empty when one can be. */
    public static Optional<String> whyNot(DayView day) {
        return day.choices().menu().isEmpty() ? Optional.of("the menu is empty, 4 sets it up") : Optional.empty();
    }

    private static Panel form(DayView day, UiState now, BookingFields fields, Instant first) {
        var start = TextField.time("start", first, now.zone());
        var client = new TextField("client", 12, WalkInPanel::isName, ".*", "initials or a number", "");
        return new FormPanel(
                        "WALK-IN",
                        LAYOUT,
                        List.of(fields.service(), fields.chair(), start, client, fields.length(), fields.density()),
                        state -> book(day, fields, start, client.text().strip(), state))
                .note("strand and patch test as the directions say, before any mix")
                .keys("left, right choose   Enter next", "left, right choose   Enter books");
    }

    private static boolean isName(int letter) {
        return Character.isLetterOrDigit(letter) || letter == '.' || letter == '-' || letter == ' ';
    }

    private static UiEffect book(DayView day, BookingFields fields, TextField start, String client, UiState state) {
        Instant at = start.instant(day.date(), state.zone());
        if (at.isBefore(state.now().minus(Duration.ofMinutes(1))))
            return new UiEffect.Stay("start is over: takes a time from " + state.minute(state.now()) + " on");
        int chair = fields.chairNumber();
        // The same chair and start give the same id, so a walk-in cannot be booked twice by mistake.
        var booking = new Booking(
                "walk-in-" + chair + "-" + at.getEpochSecond(),
                fields.menuId(),
                chair,
                at,
                client,
                fields.length().text(),
                fields.density().text(),
                Optional.empty(),
                0,
                0,
                Optional.empty(),
                Optional.empty());
        return new UiEffect.Send(
                new DayCommand.BookService(booking), "walk-in booked, chair " + chair + " at " + start.text());
    }
}
