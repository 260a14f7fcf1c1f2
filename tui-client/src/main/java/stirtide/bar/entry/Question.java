package stirtide.bar.entry;

import java.util.List;
import stirtide.bar.frame.Pane;
import stirtide.bar.frame.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.Place;
import stirtide.bar.scene.Panel;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;
import stirtide.bar.words.Lines;

/** A question with No as its answer unless somebody presses y within twenty seconds. */
public final class Question implements Panel {
    private static final int COLUMNS = 58;

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
        inside.put(1, row + 1, "y yes   Enter or Esc no   " + Patience.words(askedAtNanos, scene.nanos()), Style.DIM);
    }

    @Override
    public PanelAnswer press(Key key, boolean machine, Scene scene) {
        return Patience.answer(key, machine, yes);
    }

    @Override
    public PanelAnswer tick(Scene scene) {
        return Patience.tick(askedAtNanos, scene.nanos());
    }
}
