package stirtide.bar.panels.form;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;
import stirtide.events.command.DayCommand;

/** A form that makes one command. It stays open until the service has answered and shows why a command was rejected. */
public final class CommandForm implements Panel, FieldSet.Form {
    private static final int COLUMNS = 72;
    private static final int MOST_FIELDS = 11;
    private static final int LEAST_FIELDS = 2;
    private static final int REASON_ROWS = 4;

    private final String title;
    private final String note;
    private final FieldSet fields;
    private final Function<List<String>, UiEffect> submit;
    private final UiEffect after;
    private Optional<DayCommand> sent = Optional.empty();
    private String rejection = "";
    private Optional<CommandForm> previous = Optional.empty();
    private boolean isFirstOfTwo;

    /**
     * A form.
     *
     * @param title heading
     * @param fields its fields, at least one
     * @param note a line below the fields, may be empty text
     * @param submit what follows from the contents once every field is valid: {@link UiEffect.Send} with the command,
     *     {@link UiEffect.Open} with a form that goes on, or {@link UiEffect.Stay} with a reason
     */
    public CommandForm(
            String title, List<? extends FormField> fields, String note, Function<List<String>, UiEffect> submit) {
        this(title, fields, note, submit, new UiEffect.Close());
    }

    /** The same; {@code after} is what follows once the service has accepted the command. */
    public CommandForm(
            String title,
            List<? extends FormField> fields,
            String note,
            Function<List<String>, UiEffect> submit,
            UiEffect after) {
        this.title = title;
        this.note = note;
        this.fields = new FieldSet(this, fields);
        this.submit = submit;
        this.after = after;
    }

    /** Says that another form comes after this one, so that nothing is recorded yet. */
    public CommandForm firstOfTwo() {
        isFirstOfTwo = true;
        return this;
    }

    /** Fields make room for a long reason. */
    private int shown() {
        int most = Math.max(LEAST_FIELDS, MOST_FIELDS + REASON_ROWS - reasonRows());
        return Math.min(Math.min(MOST_FIELDS, most), fields.all().size());
    }

    private int reasonRows() {
        return Math.max(REASON_ROWS, LineWrap.wrap(message(), COLUMNS - 2).size());
    }

    @Override
    public Frame frame() {
        return new Frame(KeyContext.FIELDS, title, COLUMNS, shown() + reasonRows() + 3);
    }

    @Override
    public void draw(Pane inside, UiState state) {
        int labels = 1
                + fields.all().stream()
                        .mapToInt(field -> field.label().length())
                        .max()
                        .orElse(0);
        int shown = shown();
        int first =
                Math.max(0, Math.min(fields.focus() - shown + 2, fields.all().size() - shown));
        fields.draw(inside, 0, new FieldSet.Columns(labels, labels + 2, COLUMNS - labels - 6), first, shown);
        int hidden = fields.all().size() - first - shown;
        inside.fit(1, shown, inside.width() - 2, hidden > 0 ? hidden + " more below" : note, Style.DIM);
        int row = shown + 1;
        for (String line : LineWrap.wrap(message(), COLUMNS - 2)) inside.put(1, row++, line, Style.STRONG);
        inside.put(1, inside.height() - 1, keys(), Style.DIM);
    }

    private String message() {
        if (sent.isPresent()) return "sent; waiting for the service";
        if (!fields.reason().isEmpty()) return "! " + fields.reason();
        return rejection.isEmpty() ? "" : "! not taken: " + rejection;
    }

    private String keys() {
        String choose = fields.all().get(fields.focus()) instanceof ChoiceField ? "left, right choose   " : "";
        String toLast = fields.focus() == 0 ? "   up: to the last field" : "";
        String last = isFirstOfTwo ? "Enter goes on" : "Enter keeps";
        return choose
                + (fields.onLast() ? last : "Enter next" + toLast)
                + (previous.isPresent() ? "   Esc: the form before" : "   Esc leaves");
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState state) {
        return fields.press(key, machine, state);
    }

    @Override
    public UiEffect cancel() {
        return previous.<UiEffect>map(UiEffect.Open::new).orElse(new UiEffect.Close());
    }

    @Override
    public void edited() {
        rejection = "";
    }

    @Override
    public UiEffect submit(Key enter, UiState state) {
        if (sent.isPresent()) return new UiEffect.Stay();
        UiEffect effect = submit.apply(fields.texts());
        if (effect instanceof UiEffect.Stay stay) return fields.stay(stay.reason());
        if (effect instanceof UiEffect.Open open && open.next() instanceof CommandForm next)
            next.previous = Optional.of(this);
        if (!(effect instanceof UiEffect.Send send)) return effect;
        sent = Optional.of(send.command());
        rejection = "";
        return new UiEffect.Send(send.command(), send.words(), Optional.of(this));
    }

    @Override
    public Optional<UiEffect> answered(DayCommand command, Optional<String> refusal) {
        if (sent.filter(command::equals).isEmpty()) return Optional.empty();
        sent = Optional.empty();
        rejection = refusal.orElse("");
        return Optional.of(refusal.isEmpty() ? after : new UiEffect.Stay());
    }
}
