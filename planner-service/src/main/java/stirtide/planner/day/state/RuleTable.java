package stirtide.planner.day.state;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * One rule for every kind of command or event. Complete: a table that lacks a kind, or has one twice, is not made.
 *
 * @param <R> kind of rule
 */
public final class RuleTable<R> {
    private final Map<Class<?>, R> rules = new HashMap<>();

    /**
     * A table of the rules of all concerns.
     *
     * @param sealed interface whose permitted classes need a rule each
     * @param type class a rule is for
     * @throws IllegalStateException when a class has no rule or two
     */
    public RuleTable(Class<?> sealed, Function<? super R, Class<?>> type, List<List<? extends R>> concerns) {
        for (var concern : concerns)
            for (R rule : concern)
                if (rules.put(type.apply(rule), rule) != null)
                    throw new IllegalStateException("two rules for " + type.apply(rule));
        var missing = new ArrayList<>(kinds(sealed));
        missing.removeAll(rules.keySet());
        if (!missing.isEmpty()) throw new IllegalStateException("no rule for " + missing);
    }

    /** The rule for a command or event. */
    public R of(Object one) {
        var rule = rules.get(one.getClass());
        if (rule == null) throw new IllegalStateException("no rule for " + one.getClass());
        return rule;
    }

    /** All classes a sealed interface permits, of interfaces below it too. */
    public static List<Class<?>> kinds(Class<?> sealed) {
        var kinds = new ArrayList<Class<?>>();
        for (var permitted : sealed.getPermittedSubclasses())
            if (permitted.isSealed()) kinds.addAll(kinds(permitted));
            else kinds.add(permitted);
        return kinds;
    }
}
