package stirtide.bar.keys;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All keys. The key handling, the footer, the help, the handbook and the tests read this one table. */
public final class KeyTable {
    /** Every binding; within a context the footer shows them in this order. */
    public static final List<KeyBinding> ALL =
            Stream.concat(ViewBindings.all(), PanelBindings.all()).toList();

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
}
