package stirtide.bar.keys;

import static stirtide.bar.keys.Binding.character;
import static stirtide.bar.keys.Binding.special;
import static stirtide.bar.keys.Place.ADVICE;
import static stirtide.bar.keys.Place.COMPARED;
import static stirtide.bar.keys.Place.FIELDS;
import static stirtide.bar.keys.Place.QUESTION;
import static stirtide.bar.keys.Place.READING;
import static stirtide.bar.keys.Place.SERVICES;
import static stirtide.bar.keys.Place.TESTS;
import static stirtide.bar.keys.Place.VISITS;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All keys. The handler, the footer, the help, the handbook and the tests read this one table. */
public final class KeyTable {
    private static final List<Binding> PANELS = List.of(
            character(SERVICES, Action.SEATED, 's', "seated", "the client is in the chair, application begins")
                    .writing(),
            character(SERVICES, Action.ZONE_DONE, 'z', "zone done", "the zone is applied")
                    .writing(),
            character(SERVICES, Action.RINSED, 'w', "rinsed", "the next applied section is rinsed")
                    .writing(),
            character(SERVICES, Action.OTHER_START, 't', "time", "the client is late or early: move the start")
                    .writing(),
            character(SERVICES, Action.CANCEL_SERVICE, 'x', "cancel", "the client does not come, or leaves")
                    .writing(),
            character(SERVICES, Action.TEST_DONE, 'p', "tests", "record when a strand or patch test was done")
                    .writing(),
            character(
                            SERVICES,
                            Action.AS_LAST_TIME,
                            'r',
                            "as last time",
                            "the formula of the last visit, or the menu's")
                    .writing(),
            character(
                            SERVICES,
                            Action.LEVELS,
                            'l',
                            "levels",
                            "record the level of the hair in a zone, before and after")
                    .writing(),
            character(SERVICES, Action.VISITS, 'v', "visits", "earlier visits of the client, two side by side"),
            special(SERVICES, Action.UP, Key.Kind.UP, "up", "", "row up"),
            special(SERVICES, Action.DOWN, Key.Kind.DOWN, "down", "", "row down"),
            character(SERVICES, Action.UP, 'k', "", "row up"),
            character(SERVICES, Action.DOWN, 'j', "", "row down"),
            special(SERVICES, Action.BACK, Key.Kind.ESCAPE, "Esc", "back", "back to the bar"),
            special(ADVICE, Action.TAKE, Key.Kind.ENTER, "Enter", "take", "do what is picked: asks first")
                    .writing(),
            special(ADVICE, Action.UP, Key.Kind.UP, "up", "", "row up"),
            special(ADVICE, Action.DOWN, Key.Kind.DOWN, "down", "", "row down"),
            character(ADVICE, Action.UP, 'k', "", "row up"),
            character(ADVICE, Action.DOWN, 'j', "", "row down"),
            special(ADVICE, Action.BACK, Key.Kind.ESCAPE, "Esc", "back", "back to the floor"),
            character(COMPARED, Action.MARK, 'm', "mark", "mark the plan on show: compare with it from now on"),
            special(COMPARED, Action.UP, Key.Kind.UP, "up", "", "a line up"),
            special(COMPARED, Action.DOWN, Key.Kind.DOWN, "down", "", "a line down"),
            special(COMPARED, Action.BACK, Key.Kind.ESCAPE, "Esc", "back", "back to the floor"),
            special(VISITS, Action.EARLIER, Key.Kind.LEFT, "left", "earlier", "an earlier visit on this side"),
            special(VISITS, Action.LATER, Key.Kind.RIGHT, "right", "later", "a later visit on this side"),
            special(VISITS, Action.OTHER_LIST, Key.Kind.TAB, "Tab", "other side", "the other of the two visits"),
            special(VISITS, Action.UP, Key.Kind.UP, "up", "", "a line up"),
            special(VISITS, Action.DOWN, Key.Kind.DOWN, "down", "", "a line down"),
            special(VISITS, Action.BACK, Key.Kind.ESCAPE, "Esc", "back", "back to the view"),
            character(TESTS, Action.SWATCH, 'n', "new swatch", "record a test swatch that was rinsed")
                    .writing(),
            character(TESTS, Action.STRIP, 'p', "pH strip", "record a pH strip that was read in a test mix")
                    .writing(),
            special(TESTS, Action.UP, Key.Kind.UP, "up", "", "a line up"),
            special(TESTS, Action.DOWN, Key.Kind.DOWN, "down", "", "a line down"),
            special(TESTS, Action.NEXT_PART, Key.Kind.TAB, "Tab", "part", "the next part of what does not fit at once"),
            special(TESTS, Action.BACK, Key.Kind.ESCAPE, "Esc", "back", "back to the view"),
            special(
                    FIELDS,
                    Action.KEEP,
                    Key.Kind.ENTER,
                    "Enter",
                    "go on",
                    "next field; on the last one: done; on an empty weight: take what the scale shows"),
            special(FIELDS, Action.NEXT_FIELD, Key.Kind.TAB, "Tab", "", "next field"),
            special(FIELDS, Action.NEXT_FIELD, Key.Kind.DOWN, "down", "", "next field"),
            special(FIELDS, Action.FIELD_BEFORE, Key.Kind.BACK_TAB, "Shift-Tab", "", "field before"),
            special(FIELDS, Action.FIELD_BEFORE, Key.Kind.UP, "up", "", "field before"),
            special(FIELDS, Action.CHOICE_BEFORE, Key.Kind.LEFT, "left", "", "choice before"),
            special(FIELDS, Action.NEXT_CHOICE, Key.Kind.RIGHT, "right", "", "next choice"),
            special(FIELDS, Action.ERASE, Key.Kind.ERASE, "Backspace", "", "erase a character"),
            special(FIELDS, Action.BACK, Key.Kind.ESCAPE, "Esc", "back", "leave without an entry"),
            character(QUESTION, Action.YES, 'y', "yes", "yes"),
            special(QUESTION, Action.NO, Key.Kind.ENTER, "Enter", "no", "no"),
            special(QUESTION, Action.NO, Key.Kind.ESCAPE, "Esc", "no", "no"),
            special(READING, Action.UP, Key.Kind.UP, "up", "", "a line up"),
            special(READING, Action.DOWN, Key.Kind.DOWN, "down", "", "a line down"),
            special(
                    READING,
                    Action.NEXT_PART,
                    Key.Kind.TAB,
                    "Tab",
                    "part",
                    "the next part of what does not fit at once"),
            special(READING, Action.BACK, Key.Kind.ESCAPE, "Esc", "back", "back to the bar"));

    /** Every binding; within a place the footer shows them in this order. */
    public static final List<Binding> ALL =
            Stream.concat(ViewKeys.all().stream(), PANELS.stream()).toList();

    private KeyTable() {}

    /** The bindings of a place that work with these rights. */
    public static List<Binding> of(Place place, boolean mayWrite, boolean clockCanBeDriven) {
        return ALL.stream()
                .filter(binding -> binding.place() == place)
                .filter(binding -> mayWrite || !binding.writes())
                .filter(binding -> clockCanBeDriven || !binding.drivenClockOnly())
                .toList();
    }

    /** What a key does at a place, empty when it does nothing there. */
    public static Optional<Action> action(Place place, Key key, boolean mayWrite, boolean clockCanBeDriven) {
        return of(place, mayWrite, clockCanBeDriven).stream()
                .filter(binding -> binding.matches(key))
                .map(Binding::action)
                .findFirst();
    }
}
