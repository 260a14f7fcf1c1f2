package stirtide.bar.terminal;

import com.googlecode.lanterna.input.InputProvider;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.util.Map;
import java.util.function.Consumer;
import stirtide.bar.keys.Key;

/** Waits for keys on its own thread and hands them over with the time of their arrival. Ends when input ends. */
public final class KeyReader {
    private static final Map<KeyType, Key.Kind> KINDS = Map.ofEntries(
            Map.entry(KeyType.Enter, Key.Kind.ENTER),
            Map.entry(KeyType.Escape, Key.Kind.ESCAPE),
            Map.entry(KeyType.Tab, Key.Kind.TAB),
            Map.entry(KeyType.ReverseTab, Key.Kind.BACK_TAB),
            Map.entry(KeyType.Backspace, Key.Kind.ERASE),
            Map.entry(KeyType.Delete, Key.Kind.ERASE),
            Map.entry(KeyType.ArrowUp, Key.Kind.UP),
            Map.entry(KeyType.ArrowDown, Key.Kind.DOWN),
            Map.entry(KeyType.ArrowLeft, Key.Kind.LEFT),
            Map.entry(KeyType.ArrowRight, Key.Kind.RIGHT),
            Map.entry(KeyType.EOF, Key.Kind.GONE));

    private KeyReader() {}

    /** How what comes from a terminal besides keys is told apart from them. */
    public static KeyDecodingProfile profile() {
        return new ReportPatterns();
    }

    /** Starts the reader; {@code keys} is called on its thread. */
    public static Thread start(InputProvider terminal, Consumer<Key> keys) {
        var thread = new Thread(() -> read(terminal, keys), "keys");
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    private static void read(InputProvider terminal, Consumer<Key> keys) {
        while (true) {
            Key key = next(terminal);
            keys.accept(key);
            if (key.is(Key.Kind.GONE)) return;
        }
    }

    private static Key next(InputProvider terminal) {
        try {
            return translate(terminal.readInput(), System.nanoTime());
        } catch (IOException terminalIsGone) {
            return Key.of(Key.Kind.GONE, System.nanoTime());
        }
    }

    /** A key of the library as ours. */
    static Key translate(KeyStroke stroke, long nanos) {
        if (stroke == ReportPatterns.PASTE_BEGINS) return Key.of(Key.Kind.PASTE_BEGINS, nanos);
        if (stroke == ReportPatterns.PASTE_ENDS) return Key.of(Key.Kind.PASTE_ENDS, nanos);
        if (stroke.getKeyType() == KeyType.Character && !stroke.isAltDown()) {
            char character = stroke.getCharacter();
            return new Key(Key.Kind.CHARACTER, character, stroke.isCtrlDown(), nanos);
        }
        return Key.of(KINDS.getOrDefault(stroke.getKeyType(), Key.Kind.REPORT), nanos);
    }
}
