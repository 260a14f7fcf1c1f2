package stirtide.bar.panels.form;

import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.model.Panel.UiEffect;

/** How a question is answered: y is yes, Enter and Esc are no, and so are twenty seconds without a key. */
public final class ConfirmTimeout {
    private static final long NANOS = 20_000_000_000L;
    private static final long NANOS_TO_SECONDS = 1_000_000_000L;

    private ConfirmTimeout() {}

    /** How long it is still asked; both readings are monotonic. */
    public static String words(long sinceNanos, long nowNanos) {
        return "(no in " + Math.max(0, (NANOS - (nowNanos - sinceNanos)) / NANOS_TO_SECONDS) + " s)";
    }

    /** What follows from a key; {@code yes} is what follows from yes. A machine answers nothing. */
    public static UiEffect answer(Key key, boolean machine, UiEffect yes) {
        if (machine) return new UiEffect.Stay();
        KeyAction action =
                KeyTable.action(KeyContext.QUESTION, key, true, false).orElse(KeyAction.ERASE);
        if (action == KeyAction.YES) return yes;
        return action == KeyAction.NO ? new UiEffect.Close() : new UiEffect.Stay();
    }

    /** What follows from time alone. */
    public static UiEffect tick(long sinceNanos, long nowNanos) {
        return nowNanos - sinceNanos >= NANOS ? new UiEffect.Close() : new UiEffect.Stay();
    }
}
