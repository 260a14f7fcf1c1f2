package stirtide.bar.panels.services;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.form.FormPanel;
import stirtide.bar.panels.form.TextField;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/** Moves the start of a service by minutes, for a client who is late or early. */
final class ChangeStartPanel {
    private static final FormPanel.Layout LAYOUT = new FormPanel.Layout(60, 6, 1, 3, 17, 6);
    private static final int MOST_MINUTES = 240;

    private ChangeStartPanel() {}

    /** Moves a service that has not started; {@code next} opens afterwards. */
    static Panel of(DayView.ServiceCard service, Panel next) {
        var minutes = new TextField(
                "minutes later",
                4,
                letter -> letter == '-' || Character.isDigit(letter),
                "-?\\d{1,3}",
                "whole minutes from -240 to 240, such as 15; -10 is earlier",
                "");
        String title =
                "OTHER START  service " + service.service() + "  chair " + service.chair() + " " + service.clientRef();
        return new FormPanel(title, LAYOUT, List.of(minutes), state -> move(service, minutes, next, state))
                .keys("", "Enter moves the start")
                .header((inside, state) -> {
                    String booked = "booked " + state.minute(service.bookedStart());
                    String planned = ",  planned " + state.minute(service.plannedStart());
                    inside.put(1, 0, booked + planned, Style.TEXT);
                    if (minutes.problem().isEmpty())
                        inside.put(28, 1, "starts " + state.minute(start(service, shift(minutes))), Style.STRONG);
                });
    }

    private static int shift(TextField minutes) {
        return Integer.parseInt(minutes.text());
    }

    // Minutes count from when the client is expected: the plan may have made a booked start later already.
    private static Instant start(DayView.ServiceCard service, int shiftMinutes) {
        boolean planIsLater = service.plannedStart().isAfter(service.bookedStart());
        Instant expected = planIsLater ? service.plannedStart() : service.bookedStart();
        return expected.plus(Duration.ofMinutes(shiftMinutes));
    }

    private static UiEffect move(DayView.ServiceCard service, TextField minutes, Panel next, UiState state) {
        int shift = shift(minutes);
        if (shift == 0) return new UiEffect.Stay("minutes later is 0: nothing would change");
        if (Math.abs(shift) > MOST_MINUTES) return new UiEffect.Stay("minutes later takes -240 to 240");
        Instant start = start(service, shift);
        String reason = shift > 0 ? "client late" : "client early";
        return new UiEffect.Send(
                new DayCommand.MoveService(service.service(), start, Optional.empty(), reason),
                "service " + service.service() + " moved to " + state.minute(start),
                Optional.of(next));
    }
}
