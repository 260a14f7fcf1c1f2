package stirtide.bar.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.bar.frame.Pane;
import stirtide.bar.frame.Style;
import stirtide.bar.keys.Action;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.Place;
import stirtide.bar.scene.Advice;
import stirtide.bar.scene.Panel;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;
import stirtide.bar.words.Lines;
import stirtide.events.plan.MoveAdvice;

/** Shows what the planner says of a move before it is done; No unless somebody presses y within twenty seconds of that. */
public final class MovePanel implements Panel {
    private static final int COLUMNS = 72;
    private static final int ROWS = 13;

    private final Advice.Ask.Move ask;
    private final String sentence;
    private final PanelAnswer yes;
    private final long openedNanos;
    private long answeredNanos = -1;

    /**
     * Asks whether a service is to be moved.
     *
     * @param ask what the planner was asked
     * @param sentence what is to be done, in words
     * @param yes what follows when the answer is yes
     * @param openedNanos monotonic reading when it was opened
     */
    public MovePanel(Advice.Ask.Move ask, String sentence, PanelAnswer yes, long openedNanos) {
        this.ask = ask;
        this.sentence = sentence;
        this.yes = yes;
        this.openedNanos = openedNanos;
    }

    @Override
    public Place place() {
        return Place.QUESTION;
    }

    @Override
    public String title() {
        return "MOVE?";
    }

    @Override
    public int columns() {
        return COLUMNS;
    }

    @Override
    public int rows() {
        return ROWS;
    }

    private Optional<Advice.Answer> answer(Scene scene) {
        return scene.pages().advice().filter(one -> one.ask().equals(ask)).flatMap(Advice::answer);
    }

    @Override
    public void draw(Pane inside, Scene scene) {
        int row = 0;
        for (String line : Lines.wrap(sentence, COLUMNS - 2)) inside.put(1, row++, line, Style.TEXT);
        row++;
        for (String line : effect(scene)) {
            // Figures stand one below the other, so their blanks are kept.
            boolean figures = line.startsWith("now ") || line.startsWith("then ");
            for (String part : figures ? List.of(line) : Lines.wrap(line, COLUMNS - 2))
                if (row < ROWS - 1) inside.fit(1, row++, COLUMNS - 2, part, figures ? Style.STRONG : Style.TEXT);
        }
        inside.put(1, ROWS - 1, keys(scene), Style.DIM);
    }

    private List<String> effect(Scene scene) {
        Optional<Advice.Answer> answer = answer(scene);
        if (answer.isEmpty()) return List.of(AdviceText.triedSince(openedNanos, scene.nanos()));
        if (answer.get() instanceof Advice.Answer.Failed failed)
            return List.of("the planner gives no effect: " + failed.sentence());
        var lines = new ArrayList<String>();
        MoveAdvice advice = ((Advice.Answer.Moves) answer.get()).advice();
        lines.add("now    " + AdviceText.figures(advice.present()));
        for (MoveAdvice.MoveEffect effect : advice.singles()) {
            lines.add("then   " + AdviceText.figures(effect.then()));
            lines.add(effect.sentence());
        }
        return lines;
    }

    private String keys(Scene scene) {
        if (answer(scene).isEmpty()) return "y moves it once the effect is told   Enter or Esc no";
        long from = answeredNanos < 0 ? scene.nanos() : answeredNanos;
        return "y moves it   Enter or Esc no   " + Patience.words(from, scene.nanos());
    }

    @Override
    public PanelAnswer press(Key key, boolean machine, Scene scene) {
        return Patience.answer(key, machine, answer(scene).isPresent() ? yes : new PanelAnswer.Stay());
    }

    @Override
    public boolean offers(Action action, Scene scene) {
        return action != Action.YES || answer(scene).isPresent();
    }

    @Override
    public PanelAnswer tick(Scene scene) {
        if (answer(scene).isEmpty()) return new PanelAnswer.Stay();
        if (answeredNanos < 0) answeredNanos = scene.nanos();
        return Patience.tick(answeredNanos, scene.nanos());
    }
}
