package stirtide.bar.panels;

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
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;
import stirtide.events.command.DayCommand;
import stirtide.events.plan.MoveAdvice;

/** What the planner answers to a question that changes nothing; Enter goes on from there. */
public final class AdvicePanel implements Panel {
    private static final int COLUMNS = 74;
    private static final int ROWS = 16;

    private final String title;
    private int picked;

    /** Shows the answer to what was asked last. */
    public AdvicePanel(String title) {
        this.title = title;
    }

    @Override
    public KeyContext place() {
        return KeyContext.ADVICE;
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
        return ROWS;
    }

    private static Optional<Inquiry.Answer> answer(UiState scene) {
        return scene.pages().advice().flatMap(Inquiry::answer);
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        Optional<Inquiry.Answer> answer = answer(scene);
        if (answer.isEmpty()) {
            long asked = scene.pages().advice().map(Inquiry::askedNanos).orElse(scene.nanos());
            inside.put(1, 1, AdviceText.triedSince(asked, scene.nanos()), Style.TEXT);
        } else if (answer.get() instanceof Inquiry.Answer.Moves moves) {
            moves(inside, moves.advice(), scene);
        } else {
            sentence(inside, answer.get());
        }
        inside.put(1, inside.height() - 1, keys(answer), Style.DIM);
    }

    private static void sentence(Pane inside, Inquiry.Answer answer) {
        var lines = new ArrayList<String>();
        if (answer instanceof Inquiry.Answer.WalkIn walkIn) {
            lines.addAll(LineWrap.wrap(walkIn.advice().sentence(), COLUMNS - 2));
            lines.add("");
            lines.add("now    " + AdviceText.figures(walkIn.advice().present()));
            walkIn.advice().then().ifPresent(then -> lines.add("then   " + AdviceText.figures(then)));
        } else if (answer instanceof Inquiry.Answer.Help help) {
            lines.addAll(LineWrap.wrap(help.advice().sentence(), COLUMNS - 2));
            lines.add("");
            lines.add("now    " + AdviceText.figures(help.advice().present()));
            lines.add("then   " + AdviceText.figures(help.advice().then()));
        } else if (answer instanceof Inquiry.Answer.Failed failed) {
            lines.addAll(LineWrap.wrap("no answer: " + failed.sentence(), COLUMNS - 2));
        }
        int row = 1;
        for (String line : lines) inside.fit(1, row++, inside.width() - 2, line, Style.TEXT);
    }

    private void moves(Pane inside, MoveAdvice advice, UiState scene) {
        List<MoveAdvice.MoveEffect> all = AdviceText.ranked(advice);
        inside.fit(1, 0, inside.width() - 2, "now    " + AdviceText.figures(advice.present()), Style.STRONG);
        inside.fit(1, 1, inside.width() - 2, AdviceText.untried(advice), Style.DIM);
        if (all.isEmpty()) inside.put(1, 2, "no service may be moved, or no move helps", Style.TEXT);
        int rows = inside.height() - 6;
        int at = Math.max(0, Math.min(picked, all.size() - 1));
        int first = Math.max(0, Math.min(at - rows + 1, all.size() - rows));
        for (int i = 0; i < rows && first + i < all.size(); i++) {
            boolean isPicked = first + i == at;
            MoveAdvice.MoveEffect effect = all.get(first + i);
            String text = (isPicked ? "> " : "  ") + (first + i + 1) + "  " + AdviceText.moves(effect, scene.zone());
            inside.fit(1, 2 + i, inside.width() - 2, text, isPicked ? Style.PICKED : Style.TEXT);
        }
        if (all.isEmpty()) return;
        int row = inside.height() - 4;
        inside.fit(
                1,
                row,
                inside.width() - 2,
                "then   " + AdviceText.figures(all.get(at).then()),
                Style.STRONG);
        for (String line : LineWrap.wrap(all.get(at).sentence(), COLUMNS - 2))
            if (++row < inside.height() - 1) inside.put(1, row, line, Style.TEXT);
    }

    private static String keys(Optional<Inquiry.Answer> answer) {
        if (!isTakeable(answer)) return "Esc back";
        return answer.get() instanceof Inquiry.Answer.Moves
                ? "up, down pick   Enter moves, asks first   Esc back"
                : "Enter books that start   Esc back";
    }

    /** Whether there is something to go on with. */
    private static boolean isTakeable(Optional<Inquiry.Answer> answer) {
        if (answer.isEmpty()) return false;
        if (answer.get() instanceof Inquiry.Answer.Moves moves)
            return !AdviceText.ranked(moves.advice()).isEmpty();
        return answer.get() instanceof Inquiry.Answer.WalkIn walkIn
                && walkIn.advice().start().isPresent();
    }

    @Override
    public boolean offers(KeyAction action, UiState scene) {
        return action != KeyAction.TAKE || isTakeable(answer(scene));
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState scene) {
        Optional<KeyAction> action = KeyTable.action(place(), key, scene.mayWrite(), false);
        if (machine || action.isEmpty()) return new UiEffect.Stay();
        if (action.get() == KeyAction.BACK) return new UiEffect.Close();
        if (action.get() == KeyAction.UP) picked = Math.max(0, picked - 1);
        if (action.get() == KeyAction.DOWN) picked++;
        return action.get() == KeyAction.TAKE ? take(scene) : new UiEffect.Stay();
    }

    private UiEffect take(UiState scene) {
        Optional<Inquiry.Answer> answer = answer(scene);
        if (!isTakeable(answer) || scene.view().isEmpty()) return new UiEffect.Stay();
        if (answer.get() instanceof Inquiry.Answer.Moves moves) return move(moves.advice(), scene);
        if (answer.get() instanceof Inquiry.Answer.WalkIn walkIn
                && scene.pages().advice().orElseThrow().ask() instanceof Inquiry.Ask.WalkIn asked) {
            return new UiEffect.Open(WalkInPanel.at(
                    scene.view().get(), scene, asked, walkIn.advice().start().get()));
        }
        return new UiEffect.Stay();
    }

    private UiEffect move(MoveAdvice advice, UiState scene) {
        List<MoveAdvice.MoveEffect> all = AdviceText.ranked(advice);
        MoveAdvice.MoveEffect effect = all.get(Math.max(0, Math.min(picked, all.size() - 1)));
        var sends = effect.moves().stream()
                .map(move -> new UiEffect.Send(
                        new DayCommand.MoveService(
                                move.service(), move.to(), Optional.empty(), "advice of the planner"),
                        AdviceText.move(move, scene.zone()),
                        Optional.empty()))
                .toList();
        String sentence = AdviceText.moves(effect, scene.zone()) + "? Ask the clients first. " + effect.sentence();
        return new UiEffect.Open(new ConfirmPanel("MOVE?", sentence, new UiEffect.Together(sends), scene.nanos()));
    }
}
