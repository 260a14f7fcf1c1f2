package stirtide.bar.cli;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import stirtide.bar.scale.ScaleInput;
import stirtide.bar.scale.SerialDialect;

/** The part of the command line that names a scale. */
final class ScaleOptions {
    private static final String USB = "usb";

    private ScaleOptions() {}

    /** What is wrong with the options given, in a sentence. */
    static Optional<String> problem(ParsedOptions given) {
        Optional<String> file = given.value(BarOption.DIALECT);
        if (file.isEmpty()) return Optional.empty();
        if (given.value(BarOption.SCALE, USB).equals(USB))
            return Optional.of("--dialect goes with --scale and the path of a serial scale");
        return dialect(file.get()) instanceof SerialDialect.Answer.Wrong wrong
                ? Optional.of("--dialect " + file.get() + ": " + wrong.sentence())
                : Optional.empty();
    }

    /** The scale asked for, when there is no {@link #problem}. */
    static Optional<ScaleInput.Wanted> wanted(ParsedOptions given) {
        Optional<String> scale = given.value(BarOption.SCALE);
        if (scale.isEmpty()) return Optional.empty();
        Optional<Path> path = scale.filter(name -> !name.equals(USB)).map(Path::of);
        Optional<SerialDialect> dialect = given.value(BarOption.DIALECT)
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
