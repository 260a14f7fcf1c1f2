package stirtide.bar.panels;

import java.util.List;
import java.util.stream.IntStream;
import stirtide.bar.canvas.Pane;
import stirtide.bar.keys.Key;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.events.view.DayView;

/** Asks when a client without a booking could start so that nobody waits longer. */
public final class EarliestStartPanel extends FieldsPanel {
    private static final int COLUMNS = 60;

    private final DayView day;
    private final List<ChoiceField> choices;

    private EarliestStartPanel(DayView day, List<ChoiceField> choices) {
        super(choices);
        this.day = day;
        this.choices = choices;
    }

    /** The choices of a day. */
    public static EarliestStartPanel of(DayView day) {
        List<String> chairs = IntStream.rangeClosed(1, day.choices().chairs())
                .mapToObj(String::valueOf)
                .toList();
        List<String> menu =
                day.choices().menu().stream().map(DayView.MenuChoice::name).toList();
        return new EarliestStartPanel(
                day,
                List.of(
                        new ChoiceField("service", menu, 0),
                        new ChoiceField("chair", chairs, 0),
                        WalkInPanel.middle("length", day.choices().lengths()),
                        WalkInPanel.middle("density", day.choices().densities())));
    }

    @Override
    public String title() {
        return "EARLIEST START";
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
        drawFields(inside, 0, 12, 40);
        drawFoot(inside, 5, "left, right choose   Enter " + (onLastField() ? "asks" : "next"));
    }

    @Override
    UiEffect complete(Key enter, UiState scene) {
        var ask = new Inquiry.Ask.WalkIn(
                day.choices().menu().get(choices.get(0).picked()).menuId(),
                choices.get(2).text(),
                choices.get(3).text(),
                choices.get(1).picked() + 1);
        return new UiEffect.AskPlanner(ask, new AdvicePanel("EARLIEST START"));
    }
}
