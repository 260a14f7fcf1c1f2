package stirtide.bar.panels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.Panel;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;
import stirtide.events.plan.MoveAdvice;

/** Shows what the planner says of a move before it is done; No unless somebody presses y within twenty seconds of that. */
public final class MoveServicePanel implements Panel {
    private static final int COLUMNS = 72;
    private static final int ROWS = 13;

    private final Inquiry.Ask.Move ask;
    private final String sentence;
    private final UiEffect yes;
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
    public MoveServicePanel(Inquiry.Ask.Move ask, String sentence, UiEffect yes, long openedNanos) {
        this.ask = ask;
        this.sentence = sentence;
        this.yes = yes;
        this.openedNanos = openedNanos;
    }

    @Override
    public KeyContext place() {
        return KeyContext.QUESTION;
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

    private Optional<Inquiry.Answer> answer(UiState scene) {
        return scene.pages().advice().filter(one -> one.ask().equals(ask)).flatMap(Inquiry::answer);
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        int row = 0;
        for (String line : LineWrap.wrap(sentence, COLUMNS - 2)) inside.put(1, row++, line, Style.TEXT);
        row++;
        for (String line : effect(scene)) {
            // Figures stand one below the other, so their blanks are kept.
            boolean figures = line.startsWith("now ") || line.startsWith("then ");
            for (String part : figures ? List.of(line) : LineWrap.wrap(line, COLUMNS - 2))
                if (row < ROWS - 1) inside.fit(1, row++, COLUMNS - 2, part, figures ? Style.STRONG : Style.TEXT);
        }
        inside.put(1, ROWS - 1, keys(scene), Style.DIM);
    }

    private List<String> effect(UiState scene) {
        Optional<Inquiry.Answer> answer = answer(scene);
        if (answer.isEmpty()) return List.of(AdviceText.triedSince(openedNanos, scene.nanos()));
        if (answer.get() instanceof Inquiry.Answer.Failed failed)
            return List.of("the planner gives no effect: " + failed.sentence());
        var lines = new ArrayList<String>();
        MoveAdvice advice = ((Inquiry.Answer.Moves) answer.get()).advice();
        lines.add("now    " + AdviceText.figures(advice.present()));
        for (MoveAdvice.MoveEffect effect : advice.singles()) {
            lines.add("then   " + AdviceText.figures(effect.then()));
            lines.add(effect.sentence());
        }
        return lines;
    }

    private String keys(UiState scene) {
        if (answer(scene).isEmpty()) return "y moves it once the effect is told   Enter or Esc no";
        long from = answeredNanos < 0 ? scene.nanos() : answeredNanos;
        return "y moves it   Enter or Esc no   " + ConfirmTimeout.words(from, scene.nanos());
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState scene) {
        return ConfirmTimeout.answer(key, machine, answer(scene).isPresent() ? yes : new UiEffect.Stay());
    }

    @Override
    public boolean offers(KeyAction action, UiState scene) {
        return action != KeyAction.YES || answer(scene).isPresent();
    }

    @Override
    public UiEffect tick(UiState scene) {
        if (answer(scene).isEmpty()) return new UiEffect.Stay();
        if (answeredNanos < 0) answeredNanos = scene.nanos();
        return ConfirmTimeout.tick(answeredNanos, scene.nanos());
    }
}
