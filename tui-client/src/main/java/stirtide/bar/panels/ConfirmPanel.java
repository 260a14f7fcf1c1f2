package stirtide.bar.panels;

import java.util.List;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.Panel;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;

/** A question with No as its answer unless somebody presses y within twenty seconds. */
public final class ConfirmPanel implements Panel {
    private static final int COLUMNS = 58;

    private final String title;
    private final String sentence;
    private final UiEffect yes;
    private final long askedAtNanos;

    /** Asks; {@code yes} is what follows when the answer is yes. */
    public ConfirmPanel(String title, String sentence, UiEffect yes, long askedAtNanos) {
        this.title = title;
        this.sentence = sentence;
        this.yes = yes;
        this.askedAtNanos = askedAtNanos;
    }

    @Override
    public KeyContext place() {
        return KeyContext.QUESTION;
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public int columns() {
        return COLUMNS;
    }

    @Override
    public int rows() {
        return lines().size() + 2;
    }

    private List<String> lines() {
        return LineWrap.wrap(sentence, COLUMNS - 2);
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        int row = 0;
        for (String line : lines()) inside.put(1, row++, line, Style.TEXT);
        inside.put(
                1,
                row + 1,
                "y yes   Enter or Esc no   " + ConfirmTimeout.words(askedAtNanos, scene.nanos()),
                Style.DIM);
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState scene) {
        return ConfirmTimeout.answer(key, machine, yes);
    }

    @Override
    public UiEffect tick(UiState scene) {
        return ConfirmTimeout.tick(askedAtNanos, scene.nanos());
    }
}
