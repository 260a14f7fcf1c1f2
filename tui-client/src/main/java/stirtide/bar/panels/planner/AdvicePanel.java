package stirtide.bar.panels.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.form.ConfirmPanel;
import stirtide.bar.panels.list.InquiryText;
import stirtide.bar.panels.list.ListCursor;
import stirtide.bar.panels.services.WalkInPanel;
import stirtide.bar.text.LineWrap;
import stirtide.events.command.DayCommand;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.plan.PlanFigures;

/** What the planner answers to an inquiry; Enter goes on from there. */
public final class AdvicePanel implements Panel {
    private static final int COLUMNS = 74;
    private static final int ROWS = 16;

    private final String title;
    private final ListCursor<MoveAdvice.MoveEffect> cursor = new ListCursor<>(effect -> effect);

    /** Shows the answer to the newest inquiry. */
    public AdvicePanel(String title) {
        this.title = title;
    }

    @Override
    public Frame frame() {
        return new Frame(KeyContext.ADVICE, title, COLUMNS, ROWS);
    }

    /** The moves to choose from, none when the answer is another one. */
    private static List<MoveAdvice.MoveEffect> moves(UiState state) {
        return InquiryText.answer(state).orElse(null) instanceof Inquiry.Answer.Moves moves
                ? AdviceText.ranked(moves.advice())
                : List.of();
    }

    private static boolean hasStart(UiState state) {
        return InquiryText.answer(state).orElse(null) instanceof Inquiry.Answer.WalkIn walkIn
                && walkIn.advice().start().isPresent();
    }

    @Override
    public void draw(Pane inside, UiState state) {
        Optional<Inquiry.Answer> answer = InquiryText.answer(state);
        if (answer.orElse(null) instanceof Inquiry.Answer.Moves moves) draw(inside, moves.advice(), state);
        else {
            int row = 1;
            for (String line : lines(answer, state)) inside.fit(1, row++, inside.width() - 2, line, Style.TEXT);
        }
        String keys = hasStart(state)
                ? "Enter books that start   Esc back"
                : moves(state).isEmpty() ? "Esc back" : "up, down pick   Enter moves, asks first   Esc back";
        inside.put(1, inside.height() - 1, keys, Style.DIM);
    }

    private static List<String> lines(Optional<Inquiry.Answer> answer, UiState state) {
        if (answer.isEmpty()) {
            long asked = state.pages().advice().map(Inquiry::askedNanos).orElse(state.nanos());
            return List.of(AdviceText.triedSince(asked, state.nanos()));
        }
        if (answer.get() instanceof Inquiry.Answer.WalkIn walkIn)
            return lines(
                    walkIn.advice().sentence(),
                    walkIn.advice().present(),
                    walkIn.advice().then());
        if (answer.get() instanceof Inquiry.Answer.Help help)
            return lines(
                    help.advice().sentence(),
                    help.advice().present(),
                    Optional.of(help.advice().then()));
        return answer.get() instanceof Inquiry.Answer.Failed failed
                ? LineWrap.wrap("no answer: " + failed.sentence(), COLUMNS - 2)
                : List.of();
    }

    private static List<String> lines(String sentence, PlanFigures present, Optional<PlanFigures> then) {
        var lines = new ArrayList<>(LineWrap.wrap(sentence, COLUMNS - 2));
        lines.add("");
        lines.add("now    " + AdviceText.figures(present));
        then.ifPresent(figures -> lines.add("then   " + AdviceText.figures(figures)));
        return lines;
    }

    private void draw(Pane inside, MoveAdvice advice, UiState state) {
        List<MoveAdvice.MoveEffect> all = AdviceText.ranked(advice);
        int width = inside.width() - 2;
        inside.fit(1, 0, width, "now    " + AdviceText.figures(advice.present()), Style.STRONG);
        inside.fit(1, 1, width, AdviceText.untried(advice), Style.DIM);
        if (all.isEmpty()) inside.put(1, 2, "no move is worth asking a client", Style.TEXT);
        int rows = inside.height() - 6;
        cursor.draw(all, rows, rows - 1, (row, effect, selected) -> {
            String text = (all.indexOf(effect) + 1) + "  " + AdviceText.moves(effect, state.zone());
            inside.fit(1, 2 + row, width, (selected ? "> " : "  ") + text, selected ? Style.PICKED : Style.TEXT);
        });
        cursor.in(all).ifPresent(effect -> {
            int row = inside.height() - 4;
            inside.fit(1, row, width, "then   " + AdviceText.figures(effect.then()), Style.STRONG);
            for (String line : LineWrap.wrap(effect.sentence(), COLUMNS - 2))
                if (++row < inside.height() - 1) inside.put(1, row, line, Style.TEXT);
        });
    }

    @Override
    public boolean offers(KeyAction action, UiState state) {
        return action != KeyAction.TAKE || hasStart(state) || !moves(state).isEmpty();
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState state) {
        Optional<KeyAction> action = KeyTable.action(KeyContext.ADVICE, key, state.mayWrite(), false);
        if (machine || action.isEmpty()) return new UiEffect.Stay();
        if (action.get() == KeyAction.BACK) return new UiEffect.Close();
        if (action.get() == KeyAction.TAKE) return take(state);
        cursor.move(action.get() == KeyAction.UP ? -1 : 1, moves(state));
        return new UiEffect.Stay();
    }

    private UiEffect take(UiState state) {
        if (state.view().isEmpty()) return new UiEffect.Stay();
        if (InquiryText.answer(state).orElse(null) instanceof Inquiry.Answer.WalkIn walkIn
                && hasStart(state)
                && state.pages().advice().orElseThrow().ask() instanceof Inquiry.Ask.WalkIn asked)
            return new UiEffect.Open(WalkInPanel.at(
                    state.view().get(), state, asked, walkIn.advice().start().get()));
        return cursor.in(moves(state)).map(effect -> move(effect, state)).orElse(new UiEffect.Stay());
    }

    private static UiEffect move(MoveAdvice.MoveEffect effect, UiState state) {
        var sends = effect.moves().stream()
                .map(move -> new UiEffect.Send(
                        new DayCommand.MoveService(
                                move.service(), move.to(), Optional.empty(), "advice of the planner"),
                        AdviceText.move(move, state.zone())))
                .toList();
        String sentence = AdviceText.moves(effect, state.zone()) + "? Ask the clients first. " + effect.sentence();
        return new UiEffect.Open(new ConfirmPanel("MOVE?", sentence, new UiEffect.SendAll(sends), state.nanos()));
    }
}
