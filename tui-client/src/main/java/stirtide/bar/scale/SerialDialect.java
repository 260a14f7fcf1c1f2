package stirtide.bar.scale;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;

/**
 * How a serial scale writes its lines, read from a settings file because every maker does it another way.
 *
 * @param stable pattern of a line at rest; its first group is the number, its second, if there is one, the unit
 * @param moving pattern of a line that is not at rest, with the same groups
 * @param over pattern of a line that reports too much or too little load
 * @param speed bits a second
 */
public record SerialDialect(Pattern stable, Pattern moving, Pattern over, int speed) {
    private static final List<Integer> SPEEDS = List.of(1200, 2400, 4800, 9600, 19_200, 38_400, 57_600, 115_200);
    private static final String NEVER = "(?!)()";
    private static final int GRAM = 1000;

    /** What came of reading settings. */
    public sealed interface Answer {
        /** They are understood. */
        record Understood(SerialDialect dialect) implements Answer {}

        /** They are not; the sentence says what would be accepted. */
        record Wrong(String sentence) implements Answer {}
    }

    /** Reads settings: {@code stable} must be there; {@code moving}, {@code over} and {@code speed} may be. */
    public static Answer read(Map<String, String> settings) {
        for (String name : new TreeMap<>(settings).keySet()) {
            if (!List.of("stable", "moving", "over", "speed").contains(name)) {
                return new Answer.Wrong("unknown setting " + name + "; takes stable, moving, over, speed");
            }
        }
        String speed = settings.getOrDefault("speed", "9600");
        if (SPEEDS.stream().noneMatch(known -> known.toString().equals(speed))) {
            return new Answer.Wrong("speed " + speed + "; takes one of " + SPEEDS);
        }
        try {
            Pattern stable = Pattern.compile(settings.getOrDefault("stable", ""));
            if (stable.matcher("").groupCount() < 1) {
                return new Answer.Wrong(
                        "stable takes a pattern whose first group is the number, such as ([0-9.]+) *(g)");
            }
            Pattern moving = Pattern.compile(settings.getOrDefault("moving", NEVER));
            Pattern over = Pattern.compile(settings.getOrDefault("over", NEVER));
            return new Answer.Understood(new SerialDialect(stable, moving, over, Integer.parseInt(speed)));
        } catch (PatternSyntaxException notAPattern) {
            return new Answer.Wrong(
                    "not a pattern: " + notAPattern.getDescription() + " in " + notAPattern.getPattern());
        }
    }

    /** The reading of a line, empty for a line that means nothing. */
    public Optional<ScaleReading> reading(String line) {
        String text = line.strip();
        if (over.matcher(text).matches()) {
            return Optional.of(new ScaleReading.Unusable("the scale carries too much or too little"));
        }
        Matcher atRest = stable.matcher(text);
        if (atRest.matches()) return Optional.of(weight(atRest, true));
        Matcher inMotion = moving.matcher(text);
        return inMotion.matches() ? Optional.of(weight(inMotion, false)) : Optional.empty();
    }

    private static ScaleReading weight(Matcher match, boolean atRest) {
        String unit = match.groupCount() < 2 || match.group(2) == null
                ? "g"
                : match.group(2).strip();
        if (!unit.equals("g")) return new ScaleReading.Unusable("the scale shows " + unit + ": switch it to g");
        if (match.groupCount() < 1) return new ScaleReading.Unusable("the scale moves");
        try {
            BigDecimal grams = new BigDecimal(match.group(1).replace(" ", "").replace(',', '.'));
            int milligrams = grams.multiply(BigDecimal.valueOf(GRAM))
                    .setScale(0, RoundingMode.HALF_UP)
                    .intValueExact();
            if (milligrams < 0) return new ScaleReading.Unusable("the scale is below zero: zero it");
            return new ScaleReading.Weight(milligrams, atRest);
        } catch (NumberFormatException notANumber) {
            return new ScaleReading.Unusable("the scale wrote no number: " + match.group(1));
        }
    }
}
