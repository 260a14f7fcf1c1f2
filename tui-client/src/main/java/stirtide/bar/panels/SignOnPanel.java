package stirtide.bar.panels;

import java.util.List;
import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.Operator;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.form.ChoiceField;
import stirtide.bar.panels.form.CodeField;
import stirtide.bar.panels.form.FieldSet;
import stirtide.bar.text.LineWrap;
import stirtide.events.view.DayView;

/** Signs a person on with a name and a code. It stays until the service has let that person in. */
public final class SignOnPanel implements Panel, FieldSet.Form {
    private static final int COLUMNS = 58;
    private static final int WORD_ROW = 4;
    private static final int WORD_ROWS = 2;
    private static final long SECOND_NANOS = 1_000_000_000L;

    private final List<String> personIds;
    private final String why;
    private final ChoiceField person;
    private final CodeField code = new CodeField();
    private final FieldSet fields;
    private boolean asking;
    private boolean left;
    private long askedNanos;
    private String refused = "";
    private long lockedUntilNanos;
    private boolean locked;

    private SignOnPanel(List<DayView.PersonCard> people, String why) {
        personIds = people.stream().map(DayView.PersonCard::personId).toList();
        this.why = why;
        List<String> names = people.stream().map(DayView.PersonCard::name).toList();
        person = new ChoiceField("name", names, 0);
        fields = new FieldSet(this, List.of(person, code));
    }

    /** Offers the people of the day; {@code why} says what waits for a sign-on, empty text for nothing. */
    public static SignOnPanel of(UiState state, String why) {
        return new SignOnPanel(state.view().map(DayView::people).orElse(List.of()), why);
    }

    @Override
    public Frame frame() {
        return new Frame(KeyContext.FIELDS, "SIGN ON", COLUMNS, WORD_ROW + Math.max(WORD_ROWS, rows(refused)) + 2);
    }

    @Override
    public void draw(Pane inside, UiState state) {
        inside.fit(1, 0, COLUMNS - 2, why, Style.TEXT);
        fields.draw(inside, 1, FieldSet.Columns.at(8, COLUMNS - 14));
        int row = WORD_ROW;
        for (String line : LineWrap.wrap(word(state.nanos()), COLUMNS - 2)) inside.put(1, row++, line, Style.STRONG);
        String enter = fields.onLast() ? "Enter signs on" : "letter or left, right: name   Enter next";
        inside.put(1, inside.height() - 1, enter + "   Esc leaves", Style.DIM);
    }

    private static int rows(String sentence) {
        return LineWrap.wrap("! " + sentence, COLUMNS - 2).size();
    }

    private String word(long nanos) {
        if (asking) return "asking the service, " + (nanos - askedNanos) / SECOND_NANOS + " s";
        if (isLocked(nanos)) {
            long left = (lockedUntilNanos - nanos + SECOND_NANOS - 1) / SECOND_NANOS;
            return "! too many wrong codes: no code is looked at for " + left + " s";
        }
        if (!fields.reason().isEmpty()) return "! " + fields.reason();
        return refused.isEmpty() ? "" : "! " + refused;
    }

    private boolean isLocked(long nanos) {
        return locked && lockedUntilNanos > nanos;
    }

    @Override
    public void edited() {
        refused = "";
    }

    @Override
    public UiEffect submit(Key enter, UiState state) {
        if (asking || isLocked(state.nanos())) return new UiEffect.Stay();
        asking = true;
        askedNanos = state.nanos();
        refused = "";
        return new UiEffect.SignOn(personIds.get(person.picked()), code.text());
    }

    @Override
    public Optional<UiEffect> signOnRefused(String sentence, int waitSeconds, long nanos) {
        asking = false;
        code.clear();
        refused = sentence;
        locked = waitSeconds > 0;
        lockedUntilNanos = nanos + waitSeconds * SECOND_NANOS;
        return Optional.of(fields.stay(""));
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState state) {
        if (!asking) return fields.press(key, machine, state);
        // Until the service has answered only Esc acts, and a person who left is not signed on afterwards.
        left = key.is(Key.Kind.ESCAPE);
        return left ? new UiEffect.SignOff() : new UiEffect.Stay();
    }

    @Override
    public UiEffect tick(UiState state) {
        boolean done = left || state.operator().signOn() != Operator.SignOn.NEEDED;
        return done ? new UiEffect.Close() : new UiEffect.Stay();
    }
}
