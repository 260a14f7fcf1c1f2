package stirtide.bar.panels.form;

import java.util.List;
import java.util.concurrent.TimeUnit;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;

/**
 * A question whose answer is No unless y is pressed within twenty seconds: y is yes, Enter and Esc are no, and so are twenty
 * seconds without a key.
 */
public final class ConfirmPanel implements Panel {
    private static final int COLUMNS = 58;
    private static final long NANOS = 20_000_000_000L;

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
        String hint = "y yes   Enter or Esc no   " + remaining(openedNanos, state.nanos());
        inside.put(1, lines.size() + 1, hint, Style.DIM);
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState state) {
        return answer(key, machine, yes);
    }

    @Override
    public UiEffect tick(UiState state) {
        return tick(openedNanos, state.nanos());
    }

    /** How long it is still asked; both readings are monotonic. */
    public static String remaining(long sinceNanos, long nowNanos) {
        return "(no in " + Math.max(0, TimeUnit.NANOSECONDS.toSeconds(NANOS - (nowNanos - sinceNanos))) + " s)";
    }

    /** What follows from a key; {@code yes} is what follows from yes. A machine answers nothing. */
    public static UiEffect answer(Key key, boolean machine, UiEffect yes) {
        if (machine) return new UiEffect.Stay();
        KeyAction action =
                KeyTable.action(KeyContext.QUESTION, key, true, false).orElse(KeyAction.ERASE);
        if (action == KeyAction.YES) return yes;
        return action == KeyAction.NO ? new UiEffect.Close() : new UiEffect.Stay();
    }

    /** What follows from time alone. */
    public static UiEffect tick(long sinceNanos, long nowNanos) {
        return nowNanos - sinceNanos >= NANOS ? new UiEffect.Close() : new UiEffect.Stay();
    }
}
