package stirtide.bar.keys;

import static stirtide.bar.keys.KeyContext.BAR;
import static stirtide.bar.keys.KeyContext.DAY;
import static stirtide.bar.keys.KeyContext.FLOOR;
import static stirtide.bar.keys.KeyContext.SETUP;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stirtide.bar.keys.Key.Kind;

/** All keys. The key handling, the footer, the help, the handbook and the tests read this one table. */
public final class KeyTable {
    /** Every binding; within a context the footer shows them in this order. */
    public static final List<KeyBinding> ALL = Stream.of(
                    bar(),
                    everywhere(BAR),
                    floor(),
                    everywhere(FLOOR),
                    day(),
                    everywhere(DAY),
                    setup(),
                    everywhere(SETUP),
                    services(),
                    advice(),
                    compared(),
                    visits(),
                    tests(),
                    fields(),
                    question(),
                    reading())
            .flatMap(keys -> keys.all().stream())
            .toList();

    private KeyTable() {}

    /** The bindings of a context that work with these rights. */
    public static List<KeyBinding> of(KeyContext context, boolean mayWrite, boolean clockCanBeDriven) {
        return ALL.stream()
                .filter(binding -> binding.context() == context)
                .filter(binding -> mayWrite || !binding.writes())
                .filter(binding -> clockCanBeDriven || !binding.drivenClockOnly())
                .toList();
    }

    /** What a key does in a context, empty when it does nothing there. */
    public static Optional<KeyAction> action(KeyContext context, Key key, boolean mayWrite, boolean clockCanBeDriven) {
        return of(context, mayWrite, clockCanBeDriven).stream()
                .filter(binding -> binding.matches(key))
                .map(KeyBinding::action)
                .findFirst();
    }

    private static KeyBindings bar() {
        return KeyBindings.in(BAR)
                .write('m', KeyAction.MIX, "mix", "begin to mix the picked bowl: its life runs from here")
                .write('w', KeyAction.WEIGH, "weigh", "weigh in the picked live bowl")
                .write('o', KeyAction.HAND_OVER, "hand over", "hand the weighed bowl over to its chair")
                .write('f', KeyAction.FINISH, "finish", "the bowl is empty but for what sticks to it")
                .write('b', KeyAction.BIN, "bin", "throw away what is left, with grams and cause")
                .key(Kind.ENTER, KeyAction.OPEN, "open", "open the picked bowl: cautions, times, weights")
                .key(Kind.TAB, KeyAction.OTHER_LIST, "list", "from the queue to the live bowls and back")
                .leftAndRight(KeyAction.OTHER_LIST, "the other list", KeyAction.OTHER_LIST, "the other list");
    }

    private static KeyBindings floor() {
        String lift = "lift the picked service; lifted: set it down there, which is asked first";
        String earlier = "lifted: 5 minutes earlier; else look earlier";
        String later = "lifted: 5 minutes later; else look later";
        return KeyBindings.in(FLOOR)
                .key(Kind.ENTER, KeyAction.LIFT, "lift, set", lift)
                .key(Kind.TAB, KeyAction.OTHER_LIST, "staff", "from the chairs to the people and back")
                .leftAndRight(KeyAction.EARLIER, earlier, KeyAction.LATER, later)
                .key(',', KeyAction.MINUTE_EARLIER, "-1 min", "lifted: a minute earlier")
                .key('.', KeyAction.MINUTE_LATER, "+1 min", "lifted: a minute later")
                .key('r', KeyAction.MOVES, "advice", "which services to move, best first; nothing moves by asking")
                .key('e', KeyAction.EARLIEST, "earliest", "the earliest start of a walk-in at which no client waits")
                .key('x', KeyAction.ONE_MORE, "one more", "what one more assistant at the bar would do")
                .key('d', KeyAction.COMPARE, "compare", "the plan before the last move or mark, and now")
                .key('t', KeyAction.SCALE, "span", "more or fewer minutes a cell")
                .key('g', KeyAction.NOW, "now", "back to the clock");
    }

    private static KeyBindings day() {
        String next = "sort by the next: cause, service, stylist, lightener, chair, bowl";
        return KeyBindings.in(DAY)
                .key(Kind.RIGHT, KeyAction.SORT_NEXT, "", next)
                .key(Kind.LEFT, KeyAction.SORT_BEFORE, "", "sort by the one before")
                .key('l', KeyAction.SORT_NEXT, "", next)
                .key('h', KeyAction.SORT_BEFORE, "", "sort by the one before")
                .key('r', KeyAction.SORT_NEXT, "sort", next)
                .key('w', KeyAction.PERIOD, "weeks", "sum today, 7 days or 28 days")
                .key(Kind.ENTER, KeyAction.BEHIND, "bowls", "the bowls behind the picked bar")
                .key('d', KeyAction.EARLIER_DAYS, "days", "ask for the earlier days again")
                .key('e', KeyAction.EXPORT, "export", "write the day as JSON and as a page with charts");
    }

    private static KeyBindings setup() {
        String add = "add a piece below the picked heading, or a zone or technique";
        String enough = "how often planned grams are to be enough: set it, or let the costs say";
        return KeyBindings.in(SETUP)
                .write(Kind.ENTER, KeyAction.CHANGE, "change", "change what stands in the picked row")
                .write('n', KeyAction.ADD, "new", add)
                .write('x', KeyAction.TAKE_OUT, "take out", "take the picked piece out: asks first")
                .key(Kind.TAB, KeyAction.NEXT_PART, "part", "the next heading")
                .write('w', KeyAction.COUNT, "shelf", "count the picked product, or take in packs of it")
                .write('g', KeyAction.PIN, "grams", "pin the grams of the picked zone, or have them learned again")
                .write('f', KeyAction.FRACTION, "how sure", enough)
                .key('e', KeyAction.WRITE_FILES, "files", "write what is in force as the files of a salon");
    }

    private static KeyBindings everywhere(KeyContext view) {
        var keys =
                KeyBindings.in(view).write('a', KeyAction.ACKNOWLEDGE, "alarm seen", "say that the top alarm was seen");
        if (view == BAR || view == FLOOR)
            keys.key('s', KeyAction.SERVICES, "services", "services of the day: seat, zone done, rinsed, late, cancel")
                    .write('n', KeyAction.WALK_IN, "walk-in", "book a client who walks in");
        keys.write('u', KeyAction.TAKE_BACK, "undo", "take back your last action: it is shown, then y")
                .key('i', KeyAction.REASONS, "why", "why clients wait, what could not be planned, what changed");
        if (view == DAY) testsAndCosts(keys);
        if (view == BAR) keys.key('/', KeyAction.FIND, "find", "find a bowl by its id, chair, client or zone");
        if (view != BAR) keys.key('1', KeyAction.TO_BAR, "bar", "the bar");
        if (view != FLOOR) keys.key('2', KeyAction.TO_FLOOR, "floor", "the floor: clients over time");
        if (view != DAY) keys.key('3', KeyAction.TO_DAY, "day", "the day in grams");
        if (view != SETUP) keys.key('4', KeyAction.TO_SETUP, "setup", "what is in force: look, change");
        keys.key('?', KeyAction.KEYS, "keys", "these keys; type to narrow them down")
                .key('z', KeyAction.SHELVE, "shelve", "put the top alarm away for some minutes, not a high one")
                .key('c', KeyAction.COPY, "copy", "copy the picked row for other programs");
        if (view == BAR) testsAndCosts(keys);
        String back = view == FLOOR ? "put a lifted service back; clear a message" : "clear a message";
        String leave = "leave: asks first, but not when the clock can be driven";
        return keys.rows()
                .drive('p', KeyAction.PAUSE, "pause", "stop the salon's clock, or let it run again")
                .drive('-', KeyAction.SLOWER, "slower", "slow the salon's clock")
                .drive('+', KeyAction.FASTER, "faster", "quicken the salon's clock")
                .key(Kind.ESCAPE, KeyAction.BACK, "", back)
                .control('l', KeyAction.REDRAW, "draw everything anew")
                .key('0', KeyAction.SIGN_ON, "", "who works here: sign on with a code, sign off")
                .key('q', KeyAction.LEAVE, "leave", "leave: asks first")
                .control('c', KeyAction.LEAVE, leave);
    }

    private static void testsAndCosts(KeyBindings keys) {
        keys.key('t', KeyAction.TESTS, "tests", "test mixes: swatches and pH strips, look and record")
                .key('g', KeyAction.COSTS, "costs", "what to buy, what runs out, what bowls cost, why so many grams");
    }

    private static KeyBindings services() {
        return KeyBindings.in(KeyContext.SERVICES)
                .write('s', KeyAction.SEATED, "seated", "the client is in the chair, application begins")
                .write('z', KeyAction.ZONE_DONE, "zone done", "the zone is applied")
                .write('w', KeyAction.RINSED, "rinsed", "the next applied section is rinsed")
                .write('t', KeyAction.OTHER_START, "time", "the client is late or early: move the start")
                .write('x', KeyAction.CANCEL_SERVICE, "cancel", "the client does not come, or leaves")
                .write('p', KeyAction.TEST_DONE, "tests", "record when a strand or patch test was done")
                .write('r', KeyAction.AS_LAST_TIME, "as last time", "the formula of the last visit, or the menu's")
                .write('l', KeyAction.LEVELS, "levels", "record the level of the hair in a zone, before and after")
                .key('v', KeyAction.VISITS, "visits", "earlier visits of the client, two side by side")
                .rows()
                .key(Kind.ESCAPE, KeyAction.BACK, "back", "back to the bar");
    }

    private static KeyBindings advice() {
        return KeyBindings.in(KeyContext.ADVICE)
                .write(Kind.ENTER, KeyAction.TAKE, "take", "do what is picked: asks first")
                .rows()
                .key(Kind.ESCAPE, KeyAction.BACK, "back", "back to the floor");
    }

    private static KeyBindings compared() {
        return KeyBindings.in(KeyContext.COMPARED)
                .key('m', KeyAction.MARK, "mark", "mark the plan on show: compare with it from now on")
                .upAndDown("a line")
                .key(Kind.ESCAPE, KeyAction.BACK, "back", "back to the floor");
    }

    private static KeyBindings visits() {
        return KeyBindings.in(KeyContext.VISITS)
                .key(Kind.LEFT, KeyAction.EARLIER, "earlier", "an earlier visit on this side")
                .key(Kind.RIGHT, KeyAction.LATER, "later", "a later visit on this side")
                .key(Kind.TAB, KeyAction.OTHER_LIST, "other side", "the other of the two visits")
                .upAndDown("a line")
                .key(Kind.ESCAPE, KeyAction.BACK, "back", "back to the view");
    }

    private static KeyBindings tests() {
        return KeyBindings.in(KeyContext.TESTS)
                .write('n', KeyAction.SWATCH, "new swatch", "record a test swatch that was rinsed")
                .write('p', KeyAction.STRIP, "pH strip", "record a pH strip that was read in a test mix")
                .upAndDown("a line")
                .key(Kind.TAB, KeyAction.NEXT_PART, "part", "the next part of what does not fit at once")
                .key(Kind.ESCAPE, KeyAction.BACK, "back", "back to the view");
    }

    private static KeyBindings fields() {
        String enter = "next field; on the last one: done; on an empty weight: take what the scale shows";
        return KeyBindings.in(KeyContext.FIELDS)
                .key(Kind.ENTER, KeyAction.KEEP, "go on", enter)
                .key(Kind.TAB, KeyAction.NEXT_FIELD, "", "next field")
                .key(Kind.DOWN, KeyAction.NEXT_FIELD, "", "next field")
                .key(Kind.BACK_TAB, KeyAction.FIELD_BEFORE, "", "field before")
                .key(Kind.UP, KeyAction.FIELD_BEFORE, "", "field before")
                .key(Kind.LEFT, KeyAction.CHOICE_BEFORE, "", "choice before")
                .key(Kind.RIGHT, KeyAction.NEXT_CHOICE, "", "next choice")
                .key(Kind.ERASE, KeyAction.ERASE, "", "erase a character")
                .key(Kind.ESCAPE, KeyAction.BACK, "back", "leave without an entry");
    }

    private static KeyBindings question() {
        return KeyBindings.in(KeyContext.QUESTION)
                .key('y', KeyAction.YES, "yes", "yes")
                .key(Kind.ENTER, KeyAction.NO, "no", "no")
                .key(Kind.ESCAPE, KeyAction.NO, "no", "no");
    }

    private static KeyBindings reading() {
        return KeyBindings.in(KeyContext.READING)
                .upAndDown("a line")
                .key(Kind.TAB, KeyAction.NEXT_PART, "part", "the next part of what does not fit at once")
                .key(Kind.ESCAPE, KeyAction.BACK, "back", "back to the bar");
    }
}
