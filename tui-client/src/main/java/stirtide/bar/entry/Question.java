package stirtide.bar.entry;

import java.util.List;
import stirtide.bar.frame.Pane;
import stirtide.bar.frame.Style;
import stirtide.bar.keys.Action;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.keys.Place;
import stirtide.bar.scene.Panel;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;
import stirtide.bar.words.Lines;

/** A question with No as its answer unless somebody presses y within twenty seconds. */
public final class Question implements Panel {
    private static final int COLUMNS = 58;
    private static final long PATIENCE_NANOS = 20_000_000_000L;
    private static final int NANOS_TO_SECONDS = 1_000_000_000;

    private final String title;
    private final String sentence;
    private final PanelAnswer yes;
    private final long askedAtNanos;

    /** Asks; {@code yes} is what follows when the answer is yes. */
    public Question(String title, String sentence, PanelAnswer yes, long askedAtNanos) {
        this.title = title;
        this.sentence = sentence;
        this.yes = yes;
        this.askedAtNanos = askedAtNanos;
    }

    @Override
    public Place place() {
        return Place.QUESTION;
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
        return Lines.wrap(sentence, COLUMNS - 2);
    }

    @Override
    public void draw(Pane inside, Scene scene) {
        int row = 0;
        for (String line : lines()) inside.put(1, row++, line, Style.TEXT);
        long left = Math.max(0, (PATIENCE_NANOS - (scene.nanos() - askedAtNanos)) / NANOS_TO_SECONDS);
        inside.put(1, row + 1, "y yes   Enter or Esc no   (no in " + left + " s)", Style.DIM);
    }

    @Override
    public PanelAnswer press(Key key, boolean machine, Scene scene) {
        if (machine) return new PanelAnswer.Stay();
        Action action = KeyTable.action(place(), key, true, false).orElse(Action.ERASE);
        if (action == Action.YES) return yes;
        return action == Action.NO ? new PanelAnswer.Close() : new PanelAnswer.Stay();
    }

    @Override
    public PanelAnswer tick(Scene scene) {
        boolean over = scene.nanos() - askedAtNanos >= PATIENCE_NANOS;
        return over ? new PanelAnswer.Close() : new PanelAnswer.Stay();
    }
}
