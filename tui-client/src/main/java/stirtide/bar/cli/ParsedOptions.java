package stirtide.bar.cli;

import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The options given, with their values as text.
 *
 * <p>They are not parsed by picocli: its classes are compiled for Java 5, which no class data archive takes, and loading and
 * verifying them at each start takes as long as an empty Java program, twice over. Only help, completion and refusals load
 * it.
 */
record ParsedOptions(Map<BarOption, String> given) {
    /** Reads {@code --name value} and {@code --name=value}; of an option given twice the last counts. */
    static Optional<ParsedOptions> of(List<String> words) {
        var given = new EnumMap<BarOption, String>(BarOption.class);
        for (Iterator<String> rest = words.iterator(); rest.hasNext(); ) {
            String word = rest.next();
            int equals = word.indexOf('=');
            Optional<BarOption> found = BarOption.named(equals < 0 ? word : word.substring(0, equals));
            boolean takesValue = found.isPresent() && !found.get().value().isEmpty();
            if (found.isEmpty() || takesValue && equals < 0 && !rest.hasNext() || !takesValue && equals >= 0)
                return Optional.empty();
            given.put(found.get(), !takesValue ? "" : equals < 0 ? rest.next() : word.substring(equals + 1));
        }
        return Optional.of(new ParsedOptions(given));
    }

    boolean has(BarOption option) {
        return given.containsKey(option);
    }

    Optional<String> value(BarOption option) {
        return Optional.ofNullable(given.get(option));
    }

    String value(BarOption option, String otherwise) {
        return given.getOrDefault(option, otherwise);
    }

    /** The value of an option with choices, the first of them when it is not given. */
    String choice(BarOption option) {
        return value(option, option.choices().get(0));
    }
}
