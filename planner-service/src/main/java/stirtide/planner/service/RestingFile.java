package stirtide.planner.service;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.planner.service.RestingDays.Resting;

/**
 * What is kept of days that are over, in the file {@code closed-days}, so that a start need not read them. It can be
 * deleted: the next start reads the days and writes it anew. A line counts only if its own digest holds and the seal in it
 * is that of the log.
 */
final class RestingFile {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.days");
    private static final int WORDS = 7;

    private final Path file;
    private final Map<String, Line> lines = new TreeMap<>();
    private int stale;

    private record Line(String seal, Resting day) {}

    /** Reads what is there; a file that cannot be read counts as deleted. */
    RestingFile(Path folder) {
        file = folder.resolve("closed-days");
        try {
            if (Files.isRegularFile(file)) Files.readString(file).lines().forEach(this::take);
        } catch (IOException | IllegalArgumentException unreadable) {
            LOG.warn("{} is not used: {}", file, unreadable.toString());
            lines.clear();
        }
    }

    private void take(String line) {
        String[] words = line.split("\t", WORDS);
        if (words.length != WORDS || !words[0].equals(digest(line.substring(words[0].length())))) {
            stale++;
            return;
        }
        try {
            List<String> erased = words[5].isEmpty() ? List.of() : List.of(words[5].split(","));
            Resting day = new Resting(Long.parseLong(words[3]), Instant.parse(words[4]), erased, words[6]);
            if (lines.put(words[1], new Line(words[2], day)) != null) stale++;
        } catch (IllegalArgumentException | DateTimeException ofAnotherRelease) {
            stale++;
        }
    }

    /** What is kept of a day, if it is kept as the log has it. */
    Optional<Resting> find(String name, String seal) {
        return Optional.ofNullable(lines.get(name))
                .filter(line -> line.seal().equals(seal))
                .map(Line::day);
    }

    /** Adds a day, or writes the whole file when more than half of it is stale. May wait for the disk. */
    synchronized void keep(String name, String seal, Resting day) {
        if (lines.put(name, new Line(seal, day)) != null) stale++;
        try {
            if (stale > lines.size()) rewrite();
            else
                Files.writeString(
                        file, text(name, lines.get(name)), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException noPlace) {
            LOG.warn("{} is not written; the next start takes longer: {}", file, noPlace.toString());
        }
    }

    private void rewrite() throws IOException {
        StringBuilder all = new StringBuilder();
        lines.forEach((name, line) -> all.append(text(name, line)));
        Path fresh = file.resolveSibling("closed-days.new");
        Files.writeString(fresh, all);
        Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        stale = 0;
    }

    private static String text(String name, @org.jspecify.annotations.Nullable Line line) {
        Resting day = java.util.Objects.requireNonNull(line).day();
        String words = String.join(
                "\t",
                "",
                name,
                line.seal(),
                Long.toString(day.revision()),
                day.time().toString(),
                String.join(",", day.erased()),
                day.lessons());
        return digest(words) + words + "\n";
    }

    private static String digest(String text) {
        try {
            return HexFormat.of()
                    .formatHex(java.security.MessageDigest.getInstance("SHA-256")
                            .digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (java.security.NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
