package stirtide.bar.keys;

import java.util.stream.Stream;
import stirtide.bar.keys.Key.Kind;

/** The keys of the panels, part of {@link KeyTable#ALL}. */
final class PanelBindings {
    private PanelBindings() {}

    static Stream<KeyBinding> all() {
        return Stream.of(services(), advice(), compared(), visits(), tests(), fields(), question(), reading())
                .flatMap(keys -> keys.all().stream());
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
