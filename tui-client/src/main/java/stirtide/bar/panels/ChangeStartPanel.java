package stirtide.bar.panels;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.TimeText;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/** Moves the start of a service by minutes, for a client who is late or early. */
public final class ChangeStartPanel extends FieldsPanel {
    private static final int COLUMNS = 60;
    private static final int MOST_MINUTES = 240;

    private final DayView.ServiceCard service;
    private final TextField minutes;

    private ChangeStartPanel(DayView.ServiceCard service, TextField minutes) {
        super(List.of(minutes));
        this.service = service;
        this.minutes = minutes;
    }

    /** Moves a service that has not started. */
    public static ChangeStartPanel of(DayView.ServiceCard service) {
        return new ChangeStartPanel(
                service,
                new TextField(
                        "minutes later",
                        4,
                        letter -> letter == '-' || Character.isDigit(letter),
                        "-?\\d{1,3}",
                        "whole minutes from -240 to 240, such as 15; -10 is earlier",
                        ""));
    }

    @Override
    public String title() {
        return "OTHER START  service " + service.service() + "  chair " + service.chair() + " " + service.clientRef();
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
        String planned = ",  planned " + TimeText.minute(service.plannedStart(), scene.zone());
        inside.put(1, 0, "booked " + TimeText.minute(service.bookedStart(), scene.zone()) + planned, Style.TEXT);
        drawFields(inside, 1, 17, 6);
        start().ifPresent(start -> inside.put(28, 1, "starts " + TimeText.minute(start, scene.zone()), Style.STRONG));
        drawFoot(inside, 3, "Enter moves the start");
    }

    private OptionalInt typed() {
        return minutes.problem().isPresent() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(minutes.text()));
    }

    private Optional<Instant> start() {
        OptionalInt shift = typed();
        return shift.isEmpty()
                ? Optional.empty()
                : Optional.of(usualStart().plus(Duration.ofMinutes(shift.getAsInt())));
    }

    // Minutes count from when the client is expected: the plan may have made a booked start later already.
    private Instant usualStart() {
        boolean planIsLater = service.plannedStart().isAfter(service.bookedStart());
        return planIsLater ? service.plannedStart() : service.bookedStart();
    }

    @Override
    UiEffect complete(Key enter, UiState scene) {
        int shift = typed().orElseThrow();
        if (shift == 0) return stay("minutes later is 0: nothing would change");
        if (Math.abs(shift) > MOST_MINUTES) return stay("minutes later takes -240 to 240");
        Instant start = start().orElseThrow();
        String reason = shift > 0 ? "client late" : "client early";
        var command = new DayCommand.MoveService(service.service(), start, Optional.empty(), reason);
        String words = "service " + service.service() + " moved to " + TimeText.minute(start, scene.zone());
        return new UiEffect.Send(command, words, Optional.of(new ServicesPanel(service.service())));
    }
}
