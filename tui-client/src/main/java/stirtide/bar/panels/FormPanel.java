package stirtide.bar.panels;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;
import stirtide.events.command.DayCommand;

/** Fields that make one command. It stays open until the service has answered, and shows why when it did not take it. */
public final class FormPanel extends FieldsPanel {
    private static final int COLUMNS = 72;
    private static final int MOST_FIELDS = 11;
    private static final int REASON_ROWS = 4;

    private final String title;
    private final String note;
    private final Function<List<String>, Outcome> done;
    private final UiEffect after;
    private Optional<DayCommand> sent = Optional.empty();
    private String refused = "";
    private Optional<FormPanel> before = Optional.empty();
    private boolean leadsOn;

    /**
     * A form.
     *
     * @param title heading
     * @param specs its fields, at least one
     * @param note a line below the fields, may be empty text
     * @param done what becomes of the texts of the fields once each can be kept
     */
    public FormPanel(String title, List<Spec> specs, String note, Function<List<String>, Outcome> done) {
        this(title, specs, note, done, new UiEffect.Close());
    }

    /** The same; {@code after} is what follows once the service has taken the command. */
    public FormPanel(
            String title, List<Spec> specs, String note, Function<List<String>, Outcome> done, UiEffect after) {
        super(specs.stream().map(FormPanel::field).toList());
        this.title = title;
        this.note = note;
        this.done = done;
        this.after = after;
    }

    /** Says that another form comes after this one, so that nothing is kept yet. */
    public FormPanel leadingOn() {
        leadsOn = true;
        return this;
    }

    /**
     * One field.
     *
     * @param label label in front
     * @param choices what can be chosen, empty for a field to type into
     * @param longest most characters
     * @param pattern regular expression the whole must match
     * @param accepted what it takes, in words
     * @param first content at the start
     */
    public record Spec(String label, List<String> choices, int longest, String pattern, String accepted, String first) {
        public Spec {
            choices = List.copyOf(choices);
        }

        /** A field to type into. */
        public static Spec text(String label, int longest, String pattern, String accepted, String first) {
            return new Spec(label, List.of(), longest, pattern, accepted, first);
        }

        /** A level of hair, 1 to 10; nothing is accepted too where {@code optional}. */
        public static Spec level(String label, boolean optional) {
            String level = "([1-9]([.,]\\d)?|10([.,]0)?)";
            String accepted = "a level of 1 to 10, such as 5 or 7.5" + (optional ? ", or nothing" : "");
            return text(label, 4, optional ? level + "?" : level, accepted, "");
        }

        /** A choice; the first one when {@code first} is none of them. */
        public static Spec choice(String label, List<String> choices, String first) {
            return new Spec(label, choices, 0, "", "", first);
        }
    }

    /** What becomes of a form. */
    public sealed interface Outcome {
        /** It cannot be, with what would be accepted. */
        record Wrong(String sentence) implements Outcome {}

        /** Another form goes on; leaving it leads back to this one, as it was filled in. */
        record GoOn(FormPanel next) implements Outcome {}

        /** A command is sent. */
        record Send(DayCommand command, String words) implements Outcome {}
    }

    private static FormField field(Spec spec) {
        return spec.choices().isEmpty()
                ? new TextField(
                        spec.label(),
                        spec.longest(),
                        letter -> letter >= ' ',
                        spec.pattern(),
                        spec.accepted(),
                        spec.first())
                : new ChoiceField(
                        spec.label(), spec.choices(), Math.max(0, spec.choices().indexOf(spec.first())));
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
        return Math.min(MOST_FIELDS, allFields().size()) + REASON_ROWS + 3;
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        int labels = allFields().stream()
                        .mapToInt(field -> field.label().length())
                        .max()
                        .orElse(0)
                + 1;
        int shown = Math.min(MOST_FIELDS, allFields().size());
        int first = Math.max(0, Math.min(focus() - shown + 2, allFields().size() - shown));
        for (int i = 0; i < shown; i++) {
            FormField field = allFields().get(first + i);
            boolean focused = first + i == focus();
            inside.fit(1, i, labels, field.label(), focused ? Style.STRONG : Style.TEXT);
            field.draw(inside, labels + 2, i, COLUMNS - labels - 6, focused);
        }
        int hidden = allFields().size() - first - shown;
        if (hidden > 0) inside.put(1, shown, hidden + " more below", Style.DIM);
        else inside.fit(1, shown, inside.width() - 2, note, Style.DIM);
        int row = shown + 1;
        for (String line : LineWrap.wrap(word(), COLUMNS - 2))
            if (row <= shown + REASON_ROWS) inside.put(1, row++, line, Style.STRONG);
        inside.put(1, inside.height() - 1, keys(), Style.DIM);
    }

    private String word() {
        if (sent.isPresent()) return "sent; waiting for the service";
        if (!reason().isEmpty()) return "! " + reason();
        return refused.isEmpty() ? "" : "! not taken: " + refused;
    }

    private String keys() {
        String choose = allFields().get(focus()) instanceof ChoiceField ? "left, right choose   " : "";
        String toLast = focus() == 0 ? "   up: to the last field" : "";
        return choose
                + (onLastField() ? leadsOn ? "Enter goes on" : "Enter keeps" : "Enter next" + toLast)
                + (before.isPresent() ? "   Esc: the form before" : "   Esc leaves");
    }

    @Override
    UiEffect left() {
        return before.<UiEffect>map(UiEffect.Open::new).orElse(new UiEffect.Close());
    }

    @Override
    void edited() {
        refused = "";
    }

    @Override
    UiEffect complete(Key enter, UiState scene) {
        if (sent.isPresent()) return new UiEffect.Stay();
        Outcome outcome = done.apply(allFields().stream().map(FormField::text).toList());
        if (outcome instanceof Outcome.Wrong wrong) return stay(wrong.sentence());
        if (outcome instanceof Outcome.GoOn on) {
            on.next().before = Optional.of(this);
            return new UiEffect.Open(on.next());
        }
        var send = (Outcome.Send) outcome;
        sent = Optional.of(send.command());
        refused = "";
        return new UiEffect.Send(send.command(), send.words(), Optional.of(this));
    }

    @Override
    public Optional<UiEffect> answered(DayCommand command, Optional<String> refusal) {
        if (sent.filter(command::equals).isEmpty()) return Optional.empty();
        sent = Optional.empty();
        if (refusal.isEmpty()) return Optional.of(after);
        refused = refusal.get();
        return Optional.of(new UiEffect.Stay());
    }
}
