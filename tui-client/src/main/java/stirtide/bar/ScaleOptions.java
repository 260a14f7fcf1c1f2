package stirtide.bar;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import stirtide.bar.scale.ScaleInput;
import stirtide.bar.scale.SerialDialect;

/** The part of the command line that names a scale. */
final class ScaleOptions {
    private static final String SCALE = "--scale";
    private static final String DIALECT = "--dialect";
    private static final String USB = "usb";

    private ScaleOptions() {}

    static Optional<String> problem(Map<String, String> given) {
        if (!given.containsKey(DIALECT)) return Optional.empty();
        String scale = given.getOrDefault(SCALE, USB);
        if (scale.equals(USB)) return Optional.of(DIALECT + " goes with " + SCALE + " and the path of a serial scale");
        SerialDialect.Answer answer = dialect(given.get(DIALECT));
        return answer instanceof SerialDialect.Answer.Wrong wrong
                ? Optional.of(DIALECT + " " + given.get(DIALECT) + ": " + wrong.sentence())
                : Optional.empty();
    }

    /** The scale asked for; the problem was looked for before. */
    static Optional<ScaleInput.Wanted> wanted(Map<String, String> given) {
        String scale = given.get(SCALE);
        if (scale == null) return Optional.empty();
        Optional<Path> path = scale.equals(USB) ? Optional.empty() : Optional.of(Path.of(scale));
        Optional<SerialDialect> dialect = Optional.ofNullable(given.get(DIALECT))
                .map(ScaleOptions::dialect)
                .filter(SerialDialect.Answer.Understood.class::isInstance)
                .map(answer -> ((SerialDialect.Answer.Understood) answer).dialect());
        return Optional.of(new ScaleInput.Wanted(path, dialect));
    }

    private static SerialDialect.Answer dialect(String file) {
        var settings = new Properties();
        try (Reader reader = Files.newBufferedReader(Path.of(file))) {
            settings.load(reader);
        } catch (IOException | IllegalArgumentException unreadable) {
            return new SerialDialect.Answer.Wrong("takes a file of settings that can be read");
        }
        var map = new TreeMap<String, String>();
        settings.stringPropertyNames().forEach(name -> map.put(name, settings.getProperty(name)));
        return SerialDialect.read(map);
    }
}
