package stirtide.bar.panels.planner;

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
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.form.ConfirmPanel;
import stirtide.bar.text.LineWrap;
import stirtide.events.plan.MoveAdvice;

/** Shows what a move would do before it is done; No unless y is pressed within twenty seconds after the answer. */
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
    public Frame frame() {
        return new Frame(KeyContext.QUESTION, "MOVE?", COLUMNS, ROWS);
    }

    private Optional<Inquiry.Answer> answer(UiState state) {
        return state.pages().advice().filter(one -> one.ask().equals(ask)).flatMap(Inquiry::answer);
    }

    @Override
    public void draw(Pane inside, UiState state) {
        int row = 0;
        for (String line : LineWrap.wrap(sentence, COLUMNS - 2)) inside.put(1, row++, line, Style.TEXT);
        row++;
        for (String line : effect(state)) {
            // Figures stand one below the other, so their blanks are kept.
            boolean figures = line.startsWith("now ") || line.startsWith("then ");
            for (String part : figures ? List.of(line) : LineWrap.wrap(line, COLUMNS - 2))
                if (row < ROWS - 1) inside.fit(1, row++, COLUMNS - 2, part, figures ? Style.STRONG : Style.TEXT);
        }
        inside.put(1, ROWS - 1, keys(state), Style.DIM);
    }

    private List<String> effect(UiState state) {
        Optional<Inquiry.Answer> answer = answer(state);
        if (answer.isEmpty()) return List.of(AdviceText.triedSince(openedNanos, state.nanos()));
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

    private String keys(UiState state) {
        if (answer(state).isEmpty()) return "y moves it once the effect is known   Enter or Esc no";
        long from = answeredNanos < 0 ? state.nanos() : answeredNanos;
        return "y moves it   Enter or Esc no   " + ConfirmPanel.remaining(from, state.nanos());
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState state) {
        return ConfirmPanel.answer(key, machine, answer(state).isPresent() ? yes : new UiEffect.Stay());
    }

    @Override
    public boolean offers(KeyAction action, UiState state) {
        return action != KeyAction.YES || answer(state).isPresent();
    }

    @Override
    public UiEffect tick(UiState state) {
        if (answer(state).isEmpty()) return new UiEffect.Stay();
        if (answeredNanos < 0) answeredNanos = state.nanos();
        return ConfirmPanel.tick(answeredNanos, state.nanos());
    }
}
