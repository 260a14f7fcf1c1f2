package stirtide.planner.service;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.CRC32;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.planner.service.ClosedDaySummaries.Resting;

/**
 * What is kept of days that are over, in the file {@code closed-days}, so that a start need not read them. It can be
 * deleted: the next start reads the days and writes it anew. A line counts only if its own check sum holds and the seal in it
 * is that of the log.
 *
 * <p>A line: its check sum and the length of what follows, eight hexadecimal digits each and a blank after each, then words
 * parted by tabs. Thousands of them are taken at a start, in code that has not run before: so the length, to look for no line
 * end, a check sum that the machine knows, numbers instead of a time, and no text made of what nobody may want.
 */
final class ClosedDayCache {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.days");
    private static final int WORDS_BEFORE_LESSONS = 6;
    private static final int NUMBER = 9;
    private static final int HEAD = 2 * NUMBER;

    private final Path file;
    private final Map<String, Line> lines = new TreeMap<>();
    private int stale;

    private record Line(String seal, Resting day) {}

    /** Reads what is there; a file that cannot be read counts as deleted. */
    ClosedDayCache(Path folder) {
        file = folder.resolve("closed-days");
        try {
            if (Files.isRegularFile(file)) take(Files.readAllBytes(file));
        } catch (IOException unreadable) {
            LOG.warn("{} is not used: {}", file, unreadable.toString());
            lines.clear();
        }
    }

    private void take(byte[] all) {
        int at = 0;
        while (at < all.length) {
            int end = end(all, at);
            if (end < 0) {
                stale++;
                while (at < all.length && all[at] != '\n') at++;
            } else {
                line(all, at + HEAD, end);
                at = end;
            }
            at++;
        }
    }

    /** Where the line that begins there ends, or below 0 when it is not as it was written. */
    private static int end(byte[] all, int from) {
        try {
            if (from + HEAD > all.length) return -1;
            long end = (long) from + HEAD + Integer.parseInt(ascii(all, from + NUMBER, from + HEAD - 1), 16);
            boolean whole = end < all.length && end >= from + HEAD && all[(int) end] == '\n';
            return whole && ascii(all, from, from + NUMBER - 1).equals(sum(all, from + NUMBER, (int) end))
                    ? (int) end
                    : -1;
        } catch (NumberFormatException noLength) {
            return -1;
        }
    }

    private void line(byte[] all, int from, int end) {
        String[] words = new String[WORDS_BEFORE_LESSONS];
        int at = from;
        for (int word = 0; word < words.length; word++) {
            int begin = at;
            while (at < end && all[at] != '\t') at++;
            words[word] = new String(all, begin, at - begin, StandardCharsets.UTF_8);
            at = Math.min(end, at + 1);
        }
        try {
            Instant time = Instant.ofEpochSecond(Long.parseLong(words[3]), Integer.parseInt(words[4]));
            List<String> erased = words[5].isEmpty() ? List.of() : List.of(words[5].split(","));
            Resting day = new Resting(Long.parseLong(words[2]), time, erased, Arrays.copyOfRange(all, at, end));
            if (lines.put(words[0], new Line(words[1], day)) != null) stale++;
        } catch (IllegalArgumentException | DateTimeException ofAnotherRelease) {
            stale++;
        }
    }

    private static String ascii(byte[] all, int from, int to) {
        return new String(all, from, to - from, StandardCharsets.US_ASCII);
    }

    /** What is kept of a day, if it is kept as the log has it. */
    Optional<Resting> find(String name, String seal) {
        return Optional.ofNullable(lines.get(name))
                .filter(line -> line.seal().equals(seal))
                .map(Line::day);
    }

    /** Adds a day, or writes the whole file when more than half of it is stale. May wait for the disk. */
    synchronized void keep(String name, String seal, Resting day) {
        if (find(name, seal).isPresent()) return;
        Line line = new Line(seal, day);
        if (lines.put(name, line) != null) stale++;
        try {
            if (stale > lines.size()) rewrite();
            else Files.write(file, bytes(name, line), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException noPlace) {
            LOG.warn("{} is not written; the next start takes longer: {}", file, noPlace.toString());
        }
    }

    private void rewrite() throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        lines.forEach((name, line) -> all.writeBytes(bytes(name, line)));
        Path fresh = file.resolveSibling("closed-days.new");
        Files.write(fresh, all.toByteArray());
        Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        stale = 0;
    }

    private static byte[] bytes(String name, Line line) {
        Resting day = line.day();
        byte[] words = utf8(String.join(
                "\t",
                name,
                line.seal(),
                Long.toString(day.revision()),
                Long.toString(day.time().getEpochSecond()),
                Integer.toString(day.time().getNano()),
                String.join(",", day.erased()),
                ""));
        byte[] length = utf8(HexFormat.of().toHexDigits(words.length + day.lessons().length) + " ");
        ByteArrayOutputStream rest = new ByteArrayOutputStream();
        rest.writeBytes(length);
        rest.writeBytes(words);
        rest.writeBytes(day.lessons());
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.writeBytes(utf8(sum(rest.toByteArray(), 0, rest.size()) + " "));
        whole.writeBytes(rest.toByteArray());
        whole.write('\n');
        return whole.toByteArray();
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Against a torn or damaged line only: whoever may write here may write the log. */
    private static String sum(byte[] bytes, int from, int to) {
        CRC32 sum = new CRC32();
        sum.update(bytes, from, to - from);
        return HexFormat.of().toHexDigits((int) sum.getValue());
    }
}
