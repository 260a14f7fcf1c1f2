package stirtide.bar.panels;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.Panel;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.TimeText;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.view.DayView;

/** Books a client who walks in. */
public final class WalkInPanel extends FieldsPanel {
    private static final int COLUMNS = 62;
    private static final int FIELD_COLUMN = 14;
    private static final int FIELD_COLUMNS = 34;
    private static final long STEP_SECONDS = 300;

    private final DayView day;
    private final ChoiceField service;
    private final ChoiceField chair;
    private final TextField start;
    private final TextField client;
    private final ChoiceField length;
    private final ChoiceField density;

    private WalkInPanel(DayView day, List<FormField> fields) {
        super(fields);
        this.day = day;
        service = (ChoiceField) fields.get(0);
        chair = (ChoiceField) fields.get(1);
        start = (TextField) fields.get(2);
        client = (TextField) fields.get(3);
        length = (ChoiceField) fields.get(4);
        density = (ChoiceField) fields.get(5);
    }

    /** A walk-in on this day; the start is the next five minutes by the salon's clock. */
    public static WalkInPanel of(DayView day, UiState scene) {
        long seconds = -Math.floorDiv(-scene.now().getEpochSecond(), STEP_SECONDS) * STEP_SECONDS;
        return starting(day, scene, Instant.ofEpochSecond(seconds));
    }

    /** A panel that leads to a booking, or why nobody can be booked. */
    public static UiEffect opened(DayView day, Supplier<Panel> panel) {
        return whyNot(day).<UiEffect>map(UiEffect.Say::new).orElseGet(() -> new UiEffect.Open(panel.get()));
    }

    /** Why nobody can be booked on this day, empty when a client can be. */
    public static Optional<String> whyNot(DayView day) {
        return day.choices().menu().isEmpty() ? Optional.of("the menu is empty, 4 sets it up") : Optional.empty();
    }

    /** A walk-in at the start the planner found for what was asked. */
    static WalkInPanel at(DayView day, UiState scene, Inquiry.Ask.WalkIn asked, Instant start) {
        WalkInPanel panel = starting(day, scene, start);
        List<String> menu =
                day.choices().menu().stream().map(DayView.MenuChoice::menuId).toList();
        panel.service.pick(menu.indexOf(asked.menuId()));
        panel.chair.pick(asked.chair() - 1);
        panel.length.pick(day.choices().lengths().indexOf(asked.length()));
        panel.density.pick(day.choices().densities().indexOf(asked.density()));
        return panel;
    }

    private static WalkInPanel starting(DayView day, UiState scene, Instant soonest) {
        DayView.BookingChoices choices = day.choices();
        List<String> chairs = IntStream.rangeClosed(1, choices.chairs())
                .mapToObj(String::valueOf)
                .toList();
        String soon = TimeText.minute(soonest, scene.zone());
        return new WalkInPanel(
                day,
                List.of(
                        new ChoiceField(
                                "service",
                                choices.menu().stream()
                                        .map(DayView.MenuChoice::name)
                                        .toList(),
                                0),
                        new ChoiceField("chair", chairs, 0),
                        new TextField(
                                "start",
                                5,
                                letter -> letter == ':' || Character.isDigit(letter),
                                "([01]\\d|2[0-3]):[0-5]\\d",
                                "a time such as 14:05",
                                soon),
                        new TextField("client", 12, WalkInPanel::isName, ".*", "initials or a number", ""),
                        middle("length", choices.lengths()),
                        middle("density", choices.densities())));
    }

    static ChoiceField middle(String label, List<String> choices) {
        int medium = choices.indexOf("medium");
        return new ChoiceField(label, choices, Math.max(0, medium));
    }

    private static boolean isName(int letter) {
        return Character.isLetterOrDigit(letter) || letter == '.' || letter == '-' || letter == ' ';
    }

    @Override
    public String title() {
        return "WALK-IN";
    }

    @Override
    public int columns() {
        return COLUMNS;
    }

    @Override
    public int rows() {
        return 10;
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        drawFields(inside, 0, FIELD_COLUMN, FIELD_COLUMNS);
        inside.put(1, 6, "strand and patch test as the directions say, before any mix", Style.DIM);
        drawFoot(inside, 7, "left, right choose   " + (onLastField() ? "Enter books" : "Enter next"));
    }

    @Override
    UiEffect complete(Key enter, UiState scene) {
        Instant at = day.date()
                .atTime(LocalTime.parse(start.text()))
                .atZone(scene.zone())
                .toInstant();
        if (at.isBefore(scene.now().minus(Duration.ofMinutes(1)))) {
            return stay("start is over: takes a time from " + TimeText.minute(scene.now(), scene.zone()) + " on");
        }
        int chairNumber = chair.picked() + 1;
        // The same chair and start give the same id, so a walk-in cannot be booked twice by mistake.
        String uid = "walk-in-" + chairNumber + "-" + at.getEpochSecond();
        var booking = new Booking(
                uid,
                day.choices().menu().get(service.picked()).menuId(),
                chairNumber,
                at,
                client.text().strip(),
                length.text(),
                density.text(),
                Optional.empty(),
                0,
                0);
        String words = "walk-in booked, chair " + chairNumber + " at " + start.text();
        return new UiEffect.Send(new DayCommand.BookService(booking), words, Optional.empty());
    }
}
