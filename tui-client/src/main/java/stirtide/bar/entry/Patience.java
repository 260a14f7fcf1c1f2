package stirtide.bar.entry;

import stirtide.bar.keys.Action;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.keys.Place;
import stirtide.bar.scene.PanelAnswer;

/** How a question is answered: y is yes, Enter and Esc are no, and so are twenty seconds without a key. */
final class Patience {
    private static final long NANOS = 20_000_000_000L;
    private static final long NANOS_TO_SECONDS = 1_000_000_000L;

    private Patience() {}

    /** How long it is still asked; both readings are monotonic. */
    static String words(long sinceNanos, long nowNanos) {
        return "(no in " + Math.max(0, (NANOS - (nowNanos - sinceNanos)) / NANOS_TO_SECONDS) + " s)";
    }

    /** What follows from a key; {@code yes} is what follows from yes. A machine answers nothing. */
    static PanelAnswer answer(Key key, boolean machine, PanelAnswer yes) {
        if (machine) return new PanelAnswer.Stay();
        Action action = KeyTable.action(Place.QUESTION, key, true, false).orElse(Action.ERASE);
        if (action == Action.YES) return yes;
        return action == Action.NO ? new PanelAnswer.Close() : new PanelAnswer.Stay();
    }

    /** What follows from time alone. */
    static PanelAnswer tick(long sinceNanos, long nowNanos) {
        return nowNanos - sinceNanos >= NANOS ? new PanelAnswer.Close() : new PanelAnswer.Stay();
    }
}
