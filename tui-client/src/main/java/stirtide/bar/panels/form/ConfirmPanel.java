package stirtide.bar.panels.form;

import java.util.List;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;

/** A question whose answer is No unless y is pressed within twenty seconds. */
public final class ConfirmPanel implements Panel {
    private static final int COLUMNS = 58;

    private final String title;
    private final List<String> lines;
    private final UiEffect yes;
    private final long openedNanos;

    /**
     * A question.
     *
     * @param title heading
     * @param sentence the question
     * @param yes what follows when the answer is yes
     * @param openedNanos monotonic reading when it was opened
     */
    public ConfirmPanel(String title, String sentence, UiEffect yes, long openedNanos) {
        this.title = title;
        lines = LineWrap.wrap(sentence, COLUMNS - 2);
        this.yes = yes;
        this.openedNanos = openedNanos;
    }

    @Override
    public Frame frame() {
        return new Frame(KeyContext.QUESTION, title, COLUMNS, lines.size() + 2);
    }

    @Override
    public void draw(Pane inside, UiState state) {
        for (int i = 0; i < lines.size(); i++) inside.put(1, i, lines.get(i), Style.TEXT);
        String keys = "y yes   Enter or Esc no   " + ConfirmTimeout.words(openedNanos, state.nanos());
        inside.put(1, lines.size() + 1, keys, Style.DIM);
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState state) {
        return ConfirmTimeout.answer(key, machine, yes);
    }

    @Override
    public UiEffect tick(UiState state) {
        return ConfirmTimeout.tick(openedNanos, state.nanos());
    }
}
