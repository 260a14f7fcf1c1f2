package stirtide.bar.keys;

import static stirtide.bar.keys.Binding.character;
import static stirtide.bar.keys.Binding.control;
import static stirtide.bar.keys.Binding.special;
import static stirtide.bar.keys.Place.BAR;
import static stirtide.bar.keys.Place.DAY;
import static stirtide.bar.keys.Place.FLOOR;
import static stirtide.bar.keys.Place.SETUP;

import java.util.ArrayList;
import java.util.List;

/** The keys of the views, part of {@link KeyTable#ALL}. */
final class ViewKeys {
    private ViewKeys() {}

    static List<Binding> all() {
        var keys = new ArrayList<Binding>(bar());
        keys.addAll(everywhere(BAR));
        keys.addAll(floor());
        keys.addAll(everywhere(FLOOR));
        keys.addAll(day());
        keys.addAll(everywhere(DAY));
        keys.addAll(setup());
        keys.addAll(everywhere(SETUP));
        return List.copyOf(keys);
    }

    private static List<Binding> bar() {
        return List.of(
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
                special(
                        BAR,
                        Action.OPEN,
                        Key.Kind.ENTER,
                        "Enter",
                        "open",
                        "open the picked bowl: cautions, times, weights"),
                special(
                        BAR,
                        Action.OTHER_LIST,
                        Key.Kind.TAB,
                        "Tab",
                        "list",
                        "from the queue to the live bowls and back"),
                special(BAR, Action.OTHER_LIST, Key.Kind.LEFT, "left", "", "the other list"),
                special(BAR, Action.OTHER_LIST, Key.Kind.RIGHT, "right", "", "the other list"),
                character(BAR, Action.OTHER_LIST, 'h', "", "the other list"),
                character(BAR, Action.OTHER_LIST, 'l', "", "the other list"));
    }

    private static List<Binding> floor() {
        return List.of(
                special(
                        FLOOR,
                        Action.LIFT,
                        Key.Kind.ENTER,
                        "Enter",
                        "lift, set",
                        "lift the picked service; lifted: set it down there, which is asked first"),
                special(
                        FLOOR,
                        Action.EARLIER,
                        Key.Kind.LEFT,
                        "left",
                        "",
                        "lifted: 5 minutes earlier; else look earlier"),
                special(FLOOR, Action.LATER, Key.Kind.RIGHT, "right", "", "lifted: 5 minutes later; else look later"),
                character(FLOOR, Action.EARLIER, 'h', "", "lifted: 5 minutes earlier; else look earlier"),
                character(FLOOR, Action.LATER, 'l', "", "lifted: 5 minutes later; else look later"),
                character(FLOOR, Action.MINUTE_EARLIER, ',', "-1 min", "lifted: a minute earlier"),
                character(FLOOR, Action.MINUTE_LATER, '.', "+1 min", "lifted: a minute later"),
                character(
                        FLOOR,
                        Action.MOVES,
                        'r',
                        "advice",
                        "which services to move, best first; nothing moves by asking"),
                character(
                        FLOOR,
                        Action.EARLIEST,
                        'e',
                        "earliest",
                        "the earliest start of a walk-in at which nobody waits"),
                character(FLOOR, Action.ONE_MORE, 'x', "one more", "what one more assistant at the bar would do"),
                character(FLOOR, Action.COMPARE, 'd', "compare", "the plan before the last move or mark, and now"),
                character(FLOOR, Action.SCALE, 't', "span", "more or fewer minutes a cell"),
                character(FLOOR, Action.NOW, 'g', "now", "back to the clock"));
    }

    private static List<Binding> day() {
        return List.of(
                special(
                        DAY,
                        Action.SORT_NEXT,
                        Key.Kind.RIGHT,
                        "right",
                        "",
                        "sort by the next: cause, service, stylist, lightener, chair, bowl"),
                special(DAY, Action.SORT_BEFORE, Key.Kind.LEFT, "left", "", "sort by the one before"),
                character(
                        DAY,
                        Action.SORT_NEXT,
                        'l',
                        "",
                        "sort by the next: cause, service, stylist, lightener, chair, bowl"),
                character(DAY, Action.SORT_BEFORE, 'h', "", "sort by the one before"),
                character(
                        DAY,
                        Action.SORT_NEXT,
                        'r',
                        "sort",
                        "sort by the next: cause, service, stylist, lightener, chair, bowl"),
                character(DAY, Action.PERIOD, 'w', "weeks", "sum today, 7 days or 28 days"),
                special(DAY, Action.BEHIND, Key.Kind.ENTER, "Enter", "bowls", "the bowls behind the picked bar"),
                character(DAY, Action.EARLIER_DAYS, 'd', "days", "ask for the earlier days again"),
                character(DAY, Action.EXPORT, 'e', "export", "write the day as JSON and as a page with charts"));
    }

    private static List<Binding> setup() {
        return List.of(
                special(SETUP, Action.CHANGE, Key.Kind.ENTER, "Enter", "change", "change what stands in the picked row")
                        .writing(),
                character(SETUP, Action.ADD, 'n', "new", "add a piece below the picked heading, or a zone or technique")
                        .writing(),
                character(SETUP, Action.TAKE_OUT, 'x', "take out", "take the picked piece out: asks first")
                        .writing(),
                special(SETUP, Action.NEXT_PART, Key.Kind.TAB, "Tab", "part", "the next heading"),
                character(SETUP, Action.COUNT, 'w', "shelf", "count the picked product, or take in packs of it")
                        .writing(),
                character(
                                SETUP,
                                Action.PIN,
                                'g',
                                "grams",
                                "pin the grams of the picked zone, or have them learned again")
                        .writing(),
                character(
                                SETUP,
                                Action.FRACTION,
                                'f',
                                "enough",
                                "how often planned grams are to be enough: set it, or let the costs say")
                        .writing(),
                character(SETUP, Action.WRITE_FILES, 'e', "files", "write what is in force as the files of a salon"));
    }

    private static List<Binding> everywhere(Place place) {
        var keys = new ArrayList<Binding>();
        keys.add(character(place, Action.ACKNOWLEDGE, 'a', "alarm seen", "say that the top alarm was seen")
                .writing());
        if (place == BAR || place == FLOOR) {
            keys.add(character(
                    place,
                    Action.SERVICES,
                    's',
                    "services",
                    "services of the day: seat, zone done, rinsed, late, cancel"));
            keys.add(character(place, Action.WALK_IN, 'n', "walk-in", "book a client who walks in")
                    .writing());
        }
        keys.add(character(place, Action.TAKE_BACK, 'u', "undo", "take back your last action: it is shown, then y")
                .writing());
        keys.add(character(
                place, Action.REASONS, 'i', "why", "why clients wait, what could not be planned, what changed"));
        if (place == DAY) testsAndCosts(place, keys);
        if (place == BAR) {
            keys.add(character(BAR, Action.FIND, '/', "find", "find a bowl by its id, chair, client or zone"));
        }
        if (place != BAR) keys.add(character(place, Action.TO_BAR, '1', "bar", "the bar"));
        if (place != FLOOR) keys.add(character(place, Action.TO_FLOOR, '2', "floor", "the floor: clients over time"));
        if (place != DAY) keys.add(character(place, Action.TO_DAY, '3', "day", "the day in grams"));
        if (place != SETUP) keys.add(character(place, Action.TO_SETUP, '4', "setup", "what is in force: look, change"));
        keys.add(character(place, Action.KEYS, '?', "keys", "these keys; type to narrow them down"));
        keys.add(character(
                place, Action.SHELVE, 'z', "shelve", "put the top alarm away for some minutes, not a high one"));
        keys.add(character(place, Action.COPY, 'c', "copy", "copy the picked row for other programs"));
        if (place == BAR) testsAndCosts(place, keys);
        rows(place, keys);
        clock(place, keys);
        String back = place == FLOOR ? "put a lifted service back; clear a message" : "clear a message";
        keys.add(special(place, Action.BACK, Key.Kind.ESCAPE, "Esc", "", back));
        keys.add(control(place, Action.REDRAW, 'l', "draw everything anew"));
        keys.add(character(place, Action.SIGN_ON, '0', "", "who works here: sign on with a code, sign off"));
        keys.add(character(place, Action.LEAVE, 'q', "leave", "leave: asks first"));
        keys.add(control(place, Action.LEAVE, 'c', "leave: asks first, but not when the clock can be driven"));
        return keys;
    }

    private static void testsAndCosts(Place place, List<Binding> keys) {
        keys.add(character(place, Action.TESTS, 't', "tests", "test mixes: swatches and pH strips, look and record"));
        keys.add(character(
                place, Action.COSTS, 'g', "costs", "what to buy, what runs out, what bowls cost, why so many grams"));
    }

    private static void rows(Place place, List<Binding> keys) {
        keys.add(special(place, Action.UP, Key.Kind.UP, "up", "", "row up"));
        keys.add(special(place, Action.DOWN, Key.Kind.DOWN, "down", "", "row down"));
        keys.add(character(place, Action.UP, 'k', "", "row up"));
        keys.add(character(place, Action.DOWN, 'j', "", "row down"));
    }

    private static void clock(Place place, List<Binding> keys) {
        keys.add(character(place, Action.PAUSE, 'p', "pause", "stop the salon's clock, or let it run again")
                .forDrivenClock());
        keys.add(character(place, Action.SLOWER, '-', "slower", "slow the salon's clock")
                .forDrivenClock());
        keys.add(character(place, Action.FASTER, '+', "faster", "quicken the salon's clock")
                .forDrivenClock());
    }
}
