package stirtide.bar.keys;

import static stirtide.bar.keys.KeyBinding.character;
import static stirtide.bar.keys.KeyBinding.control;
import static stirtide.bar.keys.KeyBinding.special;
import static stirtide.bar.keys.KeyContext.BAR;
import static stirtide.bar.keys.KeyContext.DAY;
import static stirtide.bar.keys.KeyContext.FLOOR;
import static stirtide.bar.keys.KeyContext.SETUP;

import java.util.ArrayList;
import java.util.List;

/** The keys of the views, part of {@link KeyTable#ALL}. */
final class ViewBindings {
    private ViewBindings() {}

    static List<KeyBinding> all() {
        var keys = new ArrayList<KeyBinding>(bar());
        keys.addAll(everywhere(BAR));
        keys.addAll(floor());
        keys.addAll(everywhere(FLOOR));
        keys.addAll(day());
        keys.addAll(everywhere(DAY));
        keys.addAll(setup());
        keys.addAll(everywhere(SETUP));
        return List.copyOf(keys);
    }

    private static List<KeyBinding> bar() {
        return List.of(
                character(BAR, KeyAction.MIX, 'm', "mix", "begin to mix the picked bowl: its life runs from here")
                        .writing(),
                character(BAR, KeyAction.WEIGH, 'w', "weigh", "weigh in the picked live bowl")
                        .writing(),
                character(BAR, KeyAction.HAND_OVER, 'o', "hand over", "hand the weighed bowl over to its chair")
                        .writing(),
                character(BAR, KeyAction.FINISH, 'f', "finish", "the bowl is empty but for what sticks to it")
                        .writing(),
                character(BAR, KeyAction.BIN, 'b', "bin", "throw away what is left, with grams and cause")
                        .writing(),
                special(
                        BAR,
                        KeyAction.OPEN,
                        Key.Kind.ENTER,
                        "Enter",
                        "open",
                        "open the picked bowl: cautions, times, weights"),
                special(
                        BAR,
                        KeyAction.OTHER_LIST,
                        Key.Kind.TAB,
                        "Tab",
                        "list",
                        "from the queue to the live bowls and back"),
                special(BAR, KeyAction.OTHER_LIST, Key.Kind.LEFT, "left", "", "the other list"),
                special(BAR, KeyAction.OTHER_LIST, Key.Kind.RIGHT, "right", "", "the other list"),
                character(BAR, KeyAction.OTHER_LIST, 'h', "", "the other list"),
                character(BAR, KeyAction.OTHER_LIST, 'l', "", "the other list"));
    }

    private static List<KeyBinding> floor() {
        return List.of(
                special(
                        FLOOR,
                        KeyAction.LIFT,
                        Key.Kind.ENTER,
                        "Enter",
                        "lift, set",
                        "lift the picked service; lifted: set it down there, which is asked first"),
                special(
                        FLOOR,
                        KeyAction.EARLIER,
                        Key.Kind.LEFT,
                        "left",
                        "",
                        "lifted: 5 minutes earlier; else look earlier"),
                special(
                        FLOOR,
                        KeyAction.LATER,
                        Key.Kind.RIGHT,
                        "right",
                        "",
                        "lifted: 5 minutes later; else look later"),
                character(FLOOR, KeyAction.EARLIER, 'h', "", "lifted: 5 minutes earlier; else look earlier"),
                character(FLOOR, KeyAction.LATER, 'l', "", "lifted: 5 minutes later; else look later"),
                character(FLOOR, KeyAction.MINUTE_EARLIER, ',', "-1 min", "lifted: a minute earlier"),
                character(FLOOR, KeyAction.MINUTE_LATER, '.', "+1 min", "lifted: a minute later"),
                character(
                        FLOOR,
                        KeyAction.MOVES,
                        'r',
                        "advice",
                        "which services to move, best first; nothing moves by asking"),
                character(
                        FLOOR,
                        KeyAction.EARLIEST,
                        'e',
                        "earliest",
                        "the earliest start of a walk-in at which nobody waits"),
                character(FLOOR, KeyAction.ONE_MORE, 'x', "one more", "what one more assistant at the bar would do"),
                character(FLOOR, KeyAction.COMPARE, 'd', "compare", "the plan before the last move or mark, and now"),
                character(FLOOR, KeyAction.SCALE, 't', "span", "more or fewer minutes a cell"),
                character(FLOOR, KeyAction.NOW, 'g', "now", "back to the clock"));
    }

    private static List<KeyBinding> day() {
        return List.of(
                special(
                        DAY,
                        KeyAction.SORT_NEXT,
                        Key.Kind.RIGHT,
                        "right",
                        "",
                        "sort by the next: cause, service, stylist, lightener, chair, bowl"),
                special(DAY, KeyAction.SORT_BEFORE, Key.Kind.LEFT, "left", "", "sort by the one before"),
                character(
                        DAY,
                        KeyAction.SORT_NEXT,
                        'l',
                        "",
                        "sort by the next: cause, service, stylist, lightener, chair, bowl"),
                character(DAY, KeyAction.SORT_BEFORE, 'h', "", "sort by the one before"),
                character(
                        DAY,
                        KeyAction.SORT_NEXT,
                        'r',
                        "sort",
                        "sort by the next: cause, service, stylist, lightener, chair, bowl"),
                character(DAY, KeyAction.PERIOD, 'w', "weeks", "sum today, 7 days or 28 days"),
                special(DAY, KeyAction.BEHIND, Key.Kind.ENTER, "Enter", "bowls", "the bowls behind the picked bar"),
                character(DAY, KeyAction.EARLIER_DAYS, 'd', "days", "ask for the earlier days again"),
                character(DAY, KeyAction.EXPORT, 'e', "export", "write the day as JSON and as a page with charts"));
    }

    private static List<KeyBinding> setup() {
        return List.of(
                special(
                                SETUP,
                                KeyAction.CHANGE,
                                Key.Kind.ENTER,
                                "Enter",
                                "change",
                                "change what stands in the picked row")
                        .writing(),
                character(
                                SETUP,
                                KeyAction.ADD,
                                'n',
                                "new",
                                "add a piece below the picked heading, or a zone or technique")
                        .writing(),
                character(SETUP, KeyAction.TAKE_OUT, 'x', "take out", "take the picked piece out: asks first")
                        .writing(),
                special(SETUP, KeyAction.NEXT_PART, Key.Kind.TAB, "Tab", "part", "the next heading"),
                character(SETUP, KeyAction.COUNT, 'w', "shelf", "count the picked product, or take in packs of it")
                        .writing(),
                character(
                                SETUP,
                                KeyAction.PIN,
                                'g',
                                "grams",
                                "pin the grams of the picked zone, or have them learned again")
                        .writing(),
                character(
                                SETUP,
                                KeyAction.FRACTION,
                                'f',
                                "enough",
                                "how often planned grams are to be enough: set it, or let the costs say")
                        .writing(),
                character(
                        SETUP, KeyAction.WRITE_FILES, 'e', "files", "write what is in force as the files of a salon"));
    }

    private static List<KeyBinding> everywhere(KeyContext place) {
        var keys = new ArrayList<KeyBinding>();
        keys.add(character(place, KeyAction.ACKNOWLEDGE, 'a', "alarm seen", "say that the top alarm was seen")
                .writing());
        if (place == BAR || place == FLOOR) {
            keys.add(character(
                    place,
                    KeyAction.SERVICES,
                    's',
                    "services",
                    "services of the day: seat, zone done, rinsed, late, cancel"));
            keys.add(character(place, KeyAction.WALK_IN, 'n', "walk-in", "book a client who walks in")
                    .writing());
        }
        keys.add(character(place, KeyAction.TAKE_BACK, 'u', "undo", "take back your last action: it is shown, then y")
                .writing());
        keys.add(character(
                place, KeyAction.REASONS, 'i', "why", "why clients wait, what could not be planned, what changed"));
        if (place == DAY) testsAndCosts(place, keys);
        if (place == BAR) {
            keys.add(character(BAR, KeyAction.FIND, '/', "find", "find a bowl by its id, chair, client or zone"));
        }
        if (place != BAR) keys.add(character(place, KeyAction.TO_BAR, '1', "bar", "the bar"));
        if (place != FLOOR)
            keys.add(character(place, KeyAction.TO_FLOOR, '2', "floor", "the floor: clients over time"));
        if (place != DAY) keys.add(character(place, KeyAction.TO_DAY, '3', "day", "the day in grams"));
        if (place != SETUP)
            keys.add(character(place, KeyAction.TO_SETUP, '4', "setup", "what is in force: look, change"));
        keys.add(character(place, KeyAction.KEYS, '?', "keys", "these keys; type to narrow them down"));
        keys.add(character(
                place, KeyAction.SHELVE, 'z', "shelve", "put the top alarm away for some minutes, not a high one"));
        keys.add(character(place, KeyAction.COPY, 'c', "copy", "copy the picked row for other programs"));
        if (place == BAR) testsAndCosts(place, keys);
        rows(place, keys);
        clock(place, keys);
        String back = place == FLOOR ? "put a lifted service back; clear a message" : "clear a message";
        keys.add(special(place, KeyAction.BACK, Key.Kind.ESCAPE, "Esc", "", back));
        keys.add(control(place, KeyAction.REDRAW, 'l', "draw everything anew"));
        keys.add(character(place, KeyAction.SIGN_ON, '0', "", "who works here: sign on with a code, sign off"));
        keys.add(character(place, KeyAction.LEAVE, 'q', "leave", "leave: asks first"));
        keys.add(control(place, KeyAction.LEAVE, 'c', "leave: asks first, but not when the clock can be driven"));
        return keys;
    }

    private static void testsAndCosts(KeyContext place, List<KeyBinding> keys) {
        keys.add(
                character(place, KeyAction.TESTS, 't', "tests", "test mixes: swatches and pH strips, look and record"));
        keys.add(character(
                place,
                KeyAction.COSTS,
                'g',
                "costs",
                "what to buy, what runs out, what bowls cost, why so many grams"));
    }

    private static void rows(KeyContext place, List<KeyBinding> keys) {
        keys.add(special(place, KeyAction.UP, Key.Kind.UP, "up", "", "row up"));
        keys.add(special(place, KeyAction.DOWN, Key.Kind.DOWN, "down", "", "row down"));
        keys.add(character(place, KeyAction.UP, 'k', "", "row up"));
        keys.add(character(place, KeyAction.DOWN, 'j', "", "row down"));
    }

    private static void clock(KeyContext place, List<KeyBinding> keys) {
        keys.add(character(place, KeyAction.PAUSE, 'p', "pause", "stop the salon's clock, or let it run again")
                .forDrivenClock());
        keys.add(character(place, KeyAction.SLOWER, '-', "slower", "slow the salon's clock")
                .forDrivenClock());
        keys.add(character(place, KeyAction.FASTER, '+', "faster", "quicken the salon's clock")
                .forDrivenClock());
    }
}
