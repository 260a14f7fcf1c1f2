package stirtide.bar.panels;

import java.util.List;
import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.model.Operator;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;
import stirtide.events.view.DayView;

/** Signs a person on with a name and a code. It stays until the service has let that person in. */
public final class SignOnPanel extends FieldsPanel {
    private static final int COLUMNS = 58;
    private static final int WORD_ROW = 4;
    private static final int WORD_ROWS = 2;
    private static final long SECOND_NANOS = 1_000_000_000L;

    private final List<String> personIds;
    private final String why;
    private final ChoiceField person;
    private final CodeField code;
    private boolean asking;
    private boolean left;
    private long askedNanos;
    private String refused = "";
    private long lockedUntilNanos;
    private boolean locked;

    private SignOnPanel(List<String> personIds, String why, ChoiceField person, CodeField code) {
        super(List.of(person, code));
        this.personIds = personIds;
        this.why = why;
        this.person = person;
        this.code = code;
    }

    /** Offers the people of the day; {@code why} says what waits for somebody to sign on, empty text for nothing. */
    public static SignOnPanel of(UiState scene, String why) {
        List<DayView.PersonCard> people = scene.view().map(DayView::people).orElse(List.of());
        var names = new ChoiceField(
                "name", people.stream().map(DayView.PersonCard::name).toList(), 0);
        return new SignOnPanel(people.stream().map(DayView.PersonCard::personId).toList(), why, names, new CodeField());
    }

    @Override
    public String title() {
        return "SIGN ON";
    }

    @Override
    public int columns() {
        return COLUMNS;
    }

    @Override
    public int rows() {
        return WORD_ROW + WORD_ROWS + 2;
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        inside.fit(1, 0, COLUMNS - 2, why, Style.TEXT);
        drawFields(inside, 1, 8, COLUMNS - 14);
        int row = WORD_ROW;
        for (String line : LineWrap.wrap(word(scene.nanos()), COLUMNS - 2))
            if (row < WORD_ROW + WORD_ROWS) inside.put(1, row++, line, Style.STRONG);
        String enter = onLastField() ? "Enter signs on" : "letter or left, right: name   Enter next";
        inside.put(1, rows() - 1, enter + "   Esc leaves", Style.DIM);
    }

    private String word(long nanos) {
        if (asking) return "asking the service, " + (nanos - askedNanos) / SECOND_NANOS + " s";
        if (isLocked(nanos)) {
            long left = (lockedUntilNanos - nanos + SECOND_NANOS - 1) / SECOND_NANOS;
            return "! too many wrong codes: no code is looked at for " + left + " s";
        }
        if (!reason().isEmpty()) return "! " + reason();
        return refused.isEmpty() ? "" : "! " + refused;
    }

    private boolean isLocked(long nanos) {
        return locked && lockedUntilNanos > nanos;
    }

    @Override
    void edited() {
        refused = "";
    }

    @Override
    UiEffect complete(Key enter, UiState scene) {
        if (asking || isLocked(scene.nanos())) return new UiEffect.Stay();
        asking = true;
        askedNanos = scene.nanos();
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
        return Optional.of(stay(""));
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState scene) {
        if (!asking) return super.press(key, machine, scene);
        // Until the service has answered only leaving means anything, and nobody who left is signed on afterwards.
        left = key.is(Key.Kind.ESCAPE);
        return left ? new UiEffect.SignOff() : new UiEffect.Stay();
    }

    @Override
    public UiEffect tick(UiState scene) {
        boolean done = left || scene.operator().signOn() != Operator.SignOn.NEEDED;
        return done ? new UiEffect.Close() : new UiEffect.Stay();
    }
}
