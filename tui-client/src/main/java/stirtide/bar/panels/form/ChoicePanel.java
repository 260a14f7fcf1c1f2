package stirtide.bar.panels.form;

import java.util.List;
import java.util.function.IntFunction;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;

/** One choice, then what follows from it. */
public final class ChoicePanel {
    private static final FormPanel.Layout LAYOUT = new FormPanel.Layout(66, 5, 0, 3, 12, 34);

    private ChoicePanel() {}

    /**
     * A choice.
     *
     * @param title heading
     * @param label label of the choice
     * @param choices what can be chosen
     * @param first place of the choice at the start
     * @param note a line below it
     * @param then what follows from the place of the choice
     */
    public static Panel of(
            String title, String label, List<String> choices, int first, String note, IntFunction<UiEffect> then) {
        var choice = new ChoiceField(label, choices, first);
        return new FormPanel(title, LAYOUT, List.of(choice), state -> then.apply(choice.picked()))
                .note(note)
                .keys("", "left, right choose   Enter goes on");
    }
}
