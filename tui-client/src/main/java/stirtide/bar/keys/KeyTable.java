package stirtide.bar.keys;

import static stirtide.bar.keys.KeyBinding.character;
import static stirtide.bar.keys.KeyBinding.special;
import static stirtide.bar.keys.KeyContext.ADVICE;
import static stirtide.bar.keys.KeyContext.COMPARED;
import static stirtide.bar.keys.KeyContext.FIELDS;
import static stirtide.bar.keys.KeyContext.QUESTION;
import static stirtide.bar.keys.KeyContext.READING;
import static stirtide.bar.keys.KeyContext.SERVICES;
import static stirtide.bar.keys.KeyContext.TESTS;
import static stirtide.bar.keys.KeyContext.VISITS;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All keys. The handler, the footer, the help, the handbook and the tests read this one table. */
public final class KeyTable {
    private static final List<KeyBinding> PANELS = List.of(
            character(SERVICES, KeyAction.SEATED, 's', "seated", "the client is in the chair, application begins")
                    .writing(),
            character(SERVICES, KeyAction.ZONE_DONE, 'z', "zone done", "the zone is applied")
                    .writing(),
            character(SERVICES, KeyAction.RINSED, 'w', "rinsed", "the next applied section is rinsed")
                    .writing(),
            character(SERVICES, KeyAction.OTHER_START, 't', "time", "the client is late or early: move the start")
                    .writing(),
            character(SERVICES, KeyAction.CANCEL_SERVICE, 'x', "cancel", "the client does not come, or leaves")
                    .writing(),
            character(SERVICES, KeyAction.TEST_DONE, 'p', "tests", "record when a strand or patch test was done")
                    .writing(),
            character(
                            SERVICES,
                            KeyAction.AS_LAST_TIME,
                            'r',
                            "as last time",
                            "the formula of the last visit, or the menu's")
                    .writing(),
            character(
                            SERVICES,
                            KeyAction.LEVELS,
                            'l',
                            "levels",
                            "record the level of the hair in a zone, before and after")
                    .writing(),
            character(SERVICES, KeyAction.VISITS, 'v', "visits", "earlier visits of the client, two side by side"),
            special(SERVICES, KeyAction.UP, Key.Kind.UP, "up", "", "row up"),
            special(SERVICES, KeyAction.DOWN, Key.Kind.DOWN, "down", "", "row down"),
            character(SERVICES, KeyAction.UP, 'k', "", "row up"),
            character(SERVICES, KeyAction.DOWN, 'j', "", "row down"),
            special(SERVICES, KeyAction.BACK, Key.Kind.ESCAPE, "Esc", "back", "back to the bar"),
            special(ADVICE, KeyAction.TAKE, Key.Kind.ENTER, "Enter", "take", "do what is picked: asks first")
                    .writing(),
            special(ADVICE, KeyAction.UP, Key.Kind.UP, "up", "", "row up"),
            special(ADVICE, KeyAction.DOWN, Key.Kind.DOWN, "down", "", "row down"),
            character(ADVICE, KeyAction.UP, 'k', "", "row up"),
            character(ADVICE, KeyAction.DOWN, 'j', "", "row down"),
            special(ADVICE, KeyAction.BACK, Key.Kind.ESCAPE, "Esc", "back", "back to the floor"),
            character(COMPARED, KeyAction.MARK, 'm', "mark", "mark the plan on show: compare with it from now on"),
            special(COMPARED, KeyAction.UP, Key.Kind.UP, "up", "", "a line up"),
            special(COMPARED, KeyAction.DOWN, Key.Kind.DOWN, "down", "", "a line down"),
            special(COMPARED, KeyAction.BACK, Key.Kind.ESCAPE, "Esc", "back", "back to the floor"),
            special(VISITS, KeyAction.EARLIER, Key.Kind.LEFT, "left", "earlier", "an earlier visit on this side"),
            special(VISITS, KeyAction.LATER, Key.Kind.RIGHT, "right", "later", "a later visit on this side"),
            special(VISITS, KeyAction.OTHER_LIST, Key.Kind.TAB, "Tab", "other side", "the other of the two visits"),
            special(VISITS, KeyAction.UP, Key.Kind.UP, "up", "", "a line up"),
            special(VISITS, KeyAction.DOWN, Key.Kind.DOWN, "down", "", "a line down"),
            special(VISITS, KeyAction.BACK, Key.Kind.ESCAPE, "Esc", "back", "back to the view"),
            character(TESTS, KeyAction.SWATCH, 'n', "new swatch", "record a test swatch that was rinsed")
                    .writing(),
            character(TESTS, KeyAction.STRIP, 'p', "pH strip", "record a pH strip that was read in a test mix")
                    .writing(),
            special(TESTS, KeyAction.UP, Key.Kind.UP, "up", "", "a line up"),
            special(TESTS, KeyAction.DOWN, Key.Kind.DOWN, "down", "", "a line down"),
            special(
                    TESTS,
                    KeyAction.NEXT_PART,
                    Key.Kind.TAB,
                    "Tab",
                    "part",
                    "the next part of what does not fit at once"),
            special(TESTS, KeyAction.BACK, Key.Kind.ESCAPE, "Esc", "back", "back to the view"),
            special(
                    FIELDS,
                    KeyAction.KEEP,
                    Key.Kind.ENTER,
                    "Enter",
                    "go on",
                    "next field; on the last one: done; on an empty weight: take what the scale shows"),
            special(FIELDS, KeyAction.NEXT_FIELD, Key.Kind.TAB, "Tab", "", "next field"),
            special(FIELDS, KeyAction.NEXT_FIELD, Key.Kind.DOWN, "down", "", "next field"),
            special(FIELDS, KeyAction.FIELD_BEFORE, Key.Kind.BACK_TAB, "Shift-Tab", "", "field before"),
            special(FIELDS, KeyAction.FIELD_BEFORE, Key.Kind.UP, "up", "", "field before"),
            special(FIELDS, KeyAction.CHOICE_BEFORE, Key.Kind.LEFT, "left", "", "choice before"),
            special(FIELDS, KeyAction.NEXT_CHOICE, Key.Kind.RIGHT, "right", "", "next choice"),
            special(FIELDS, KeyAction.ERASE, Key.Kind.ERASE, "Backspace", "", "erase a character"),
            special(FIELDS, KeyAction.BACK, Key.Kind.ESCAPE, "Esc", "back", "leave without an entry"),
            character(QUESTION, KeyAction.YES, 'y', "yes", "yes"),
            special(QUESTION, KeyAction.NO, Key.Kind.ENTER, "Enter", "no", "no"),
            special(QUESTION, KeyAction.NO, Key.Kind.ESCAPE, "Esc", "no", "no"),
            special(READING, KeyAction.UP, Key.Kind.UP, "up", "", "a line up"),
            special(READING, KeyAction.DOWN, Key.Kind.DOWN, "down", "", "a line down"),
            special(
                    READING,
                    KeyAction.NEXT_PART,
                    Key.Kind.TAB,
                    "Tab",
                    "part",
                    "the next part of what does not fit at once"),
            special(READING, KeyAction.BACK, Key.Kind.ESCAPE, "Esc", "back", "back to the bar"));

    /** Every binding; within a place the footer shows them in this order. */
    public static final List<KeyBinding> ALL =
            Stream.concat(ViewBindings.all().stream(), PANELS.stream()).toList();

    private KeyTable() {}

    /** The bindings of a place that work with these rights. */
    public static List<KeyBinding> of(KeyContext place, boolean mayWrite, boolean clockCanBeDriven) {
        return ALL.stream()
                .filter(binding -> binding.place() == place)
                .filter(binding -> mayWrite || !binding.writes())
                .filter(binding -> clockCanBeDriven || !binding.drivenClockOnly())
                .toList();
    }

    /** What a key does at a place, empty when it does nothing there. */
    public static Optional<KeyAction> action(KeyContext place, Key key, boolean mayWrite, boolean clockCanBeDriven) {
        return of(place, mayWrite, clockCanBeDriven).stream()
                .filter(binding -> binding.matches(key))
                .map(KeyBinding::action)
                .findFirst();
    }
}
