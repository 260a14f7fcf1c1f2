package stirtide.bar.keys;

import static stirtide.bar.keys.Binding.character;
import static stirtide.bar.keys.Binding.control;
import static stirtide.bar.keys.Binding.special;
import static stirtide.bar.keys.Place.BAR;
import static stirtide.bar.keys.Place.FIELDS;
import static stirtide.bar.keys.Place.QUESTION;
import static stirtide.bar.keys.Place.READING;
import static stirtide.bar.keys.Place.SERVICES;

import java.util.List;
import java.util.Optional;

/** All keys. The handler, the footer, the help, the handbook and the tests read this one table. */
public final class KeyTable {
    /** Every binding; within a place the footer shows them in this order. */
    public static final List<Binding> ALL = List.of(
            character(BAR, Action.MIX, 'm', "mix", "begin to mix the picked bowl: its life runs from here")
                    .writing(),
            character(BAR, Action.WEIGH, 'w', "weigh", "weigh in the picked live bowl")
                    .writing(),
            character(BAR, Action.HAND_OVER, 'o', "hand over", "hand the weighed bowl over to its chair")
                    .writing(),
            character(BAR, Action.FINISH, 'f', "finish", "the bowl is empty but for what sticks to it")
                    .writing(),
            character(BAR, Action.BIN, 'b', "bin", "throw away what is left, with grams and cause")
                    .writing(),
            character(BAR, Action.ACKNOWLEDGE, 'a', "alarm seen", "say that the top alarm was seen")
                    .writing(),
            character(BAR, Action.SERVICES, 's', "services", "services of the day: seat, zone done, late, cancel"),
            character(BAR, Action.WALK_IN, 'n', "walk-in", "book a client who walks in")
                    .writing(),
            character(BAR, Action.TAKE_BACK, 'u', "undo", "take back your last action: it is shown, then y")
                    .writing(),
            character(BAR, Action.REASONS, 'i', "why", "why clients wait, what could not be planned, what changed"),
            special(
                    BAR,
                    Action.OPEN,
                    Key.Kind.ENTER,
                    "Enter",
                    "open",
                    "open the picked bowl: cautions, times, weights"),
            special(BAR, Action.OTHER_LIST, Key.Kind.TAB, "Tab", "list", "from the queue to the live bowls and back"),
            special(BAR, Action.UP, Key.Kind.UP, "up", "", "row up"),
            special(BAR, Action.DOWN, Key.Kind.DOWN, "down", "", "row down"),
            character(BAR, Action.UP, 'k', "", "row up"),
            character(BAR, Action.DOWN, 'j', "", "row down"),
            special(BAR, Action.OTHER_LIST, Key.Kind.LEFT, "left", "", "the other list"),
            special(BAR, Action.OTHER_LIST, Key.Kind.RIGHT, "right", "", "the other list"),
            character(BAR, Action.OTHER_LIST, 'h', "", "the other list"),
            character(BAR, Action.OTHER_LIST, 'l', "", "the other list"),
            character(BAR, Action.FIND, '/', "find", "find a bowl by its id, chair, client or zone"),
            character(BAR, Action.KEYS, '?', "keys", "these keys; type to narrow them down"),
            character(BAR, Action.PAUSE, 'p', "pause", "stop the salon's clock, or let it run again")
                    .forDrivenClock(),
            character(BAR, Action.SLOWER, '-', "slower", "slow the salon's clock")
                    .forDrivenClock(),
            character(BAR, Action.FASTER, '+', "faster", "quicken the salon's clock")
                    .forDrivenClock(),
            special(BAR, Action.BACK, Key.Kind.ESCAPE, "Esc", "", "clear a message"),
            control(BAR, Action.REDRAW, 'l', "draw everything anew"),
            character(BAR, Action.LEAVE, 'q', "leave", "leave: asks first"),
            control(BAR, Action.LEAVE, 'c', "leave: asks first, but not when the clock can be driven"),
            character(SERVICES, Action.SEATED, 's', "seated", "the client is in the chair, application begins")
                    .writing(),
            character(SERVICES, Action.ZONE_DONE, 'z', "zone done", "the zone is applied")
                    .writing(),
            character(SERVICES, Action.OTHER_START, 't', "time", "the client is late or early: move the start")
                    .writing(),
            character(SERVICES, Action.CANCEL_SERVICE, 'x', "cancel", "the client does not come, or leaves")
                    .writing(),
            special(SERVICES, Action.UP, Key.Kind.UP, "up", "", "row up"),
            special(SERVICES, Action.DOWN, Key.Kind.DOWN, "down", "", "row down"),
            character(SERVICES, Action.UP, 'k', "", "row up"),
            character(SERVICES, Action.DOWN, 'j', "", "row down"),
            special(SERVICES, Action.BACK, Key.Kind.ESCAPE, "Esc", "back", "back to the bar"),
            special(FIELDS, Action.KEEP, Key.Kind.ENTER, "Enter", "next", "next field; on the last one: done"),
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
            special(READING, Action.BACK, Key.Kind.ESCAPE, "Esc", "back", "back to the bar"));

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
