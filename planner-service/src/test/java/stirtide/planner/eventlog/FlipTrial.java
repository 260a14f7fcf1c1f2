package stirtide.planner.eventlog;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stirtide.events.day.StoredEvent;
import stirtide.planner.eventlog.EventLog.KnownCommand;

/**
 * Damages a log at random places of its two files and looks what becomes of it. What was done must be found or harmless:
 * nothing but what was written may ever be read, stored upon or exported.
 */
public final class FlipTrial {
    private static final List<String> DAYS = List.of("quay-house/2027-03-09", "quay-house/2027-03-10");
    private static final int APPENDS_OF_A_DAY = 150;
    private static final int APPENDS_BEFORE_RESTART = 130;
    private static final int LONGEST_CUT = 4096;
    private static final int SECTOR = 512;

    private final Path written;
    private final Path damaged;
    private final Random random;
    private final Map<String, List<StoredEvent>> events = new TreeMap<>();
    private final Map<String, KnownCommand> commands = new TreeMap<>();
    private final Map<String, Tally> tallies = new TreeMap<>();
    private final List<String> wrong = new ArrayList<>();

    private FlipTrial(Path place, long seed) throws IOException {
        this.written = Files.createDirectories(place.resolve("written"));
        this.damaged = Files.createDirectories(place.resolve("damaged"));
        this.random = new Random(seed);
    }

    /** How trials of one kind ended, and how many of the events could be exported in each. */
    private static final class Tally {
        private int found;
        private int harmless;
        private final List<Double> exported = new ArrayList<>();
    }

    /** The command line. */
    @Command(
            name = "planner-service/trials/run flip",
            synopsisHeading = "usage: ",
            mixinStandardHelpOptions = true,
            exitCodeOnInvalidInput = 64,
            description =
                    "Damages a log at random places of its two files: each damage must be found or harmless. Ends with 1 when anything was silently wrong.")
    static final class Damages implements Callable<Integer> {
        @Parameters(
                index = "0",
                arity = "0..1",
                defaultValue = "1000",
                description = "number of damages (${DEFAULT-VALUE})")
        private int damages;

        @Parameters(index = "1", arity = "0..1", defaultValue = "1", description = "seed (${DEFAULT-VALUE})")
        private long seed;

        @Override
        public Integer call() throws IOException {
            if (damages < 1) throw new IllegalArgumentException("the number of damages is 1 or more");
            Path folder = Files.createTempDirectory("flip");
            try {
                FlipTrial trial = new FlipTrial(folder, seed);
                trial.write();
                trial.requireSoundBefore();
                for (int number = 0; number < damages; number++) trial.damage(number);
                return trial.report() ? 0 : 1;
            } finally {
                try (var left = Files.walk(folder)) {
                    for (Path each : left.sorted(Comparator.reverseOrder()).toList()) Files.delete(each);
                }
            }
        }
    }

    /** Ends with 1 when anything was silently wrong. */
    public static void main(String[] arguments) {
        System.exit(new CommandLine(new Damages()).execute(arguments));
    }

    /** The newest appends stay in the write-ahead file, as after a kill. */
    private void write() throws IOException {
        try (EventLog log = SqliteEventLog.open(written)) {
            append(log, 0, APPENDS_BEFORE_RESTART);
        }
        try (EventLog log = SqliteEventLog.open(written)) {
            append(log, APPENDS_BEFORE_RESTART, APPENDS_OF_A_DAY);
            for (String name : List.of("log.db", "log.db-wal", "anchor"))
                Files.copy(written.resolve(name), damaged.resolve(name + ".whole"));
        }
        System.out.println(
                "     " + events.values().stream().mapToInt(List::size).sum() + " events, log.db "
                        + Files.size(damaged.resolve("log.db.whole")) + " bytes, log.db-wal "
                        + Files.size(damaged.resolve("log.db-wal.whole")) + " bytes");
    }

    private void append(EventLog log, int from, int to) {
        for (int number = from; number < to; number++)
            for (String day : DAYS) {
                List<StoredEvent> known = events.computeIfAbsent(day, fresh -> new ArrayList<>());
                String command = "command-" + number;
                List<StoredEvent> more = EventLogContract.events(day, known.size(), 1 + random.nextInt(3), command);
                log.append(day, known.size(), command, EventLogContract.BODY, more);
                commands.put(day + " " + command, log.command(day, command).orElseThrow());
                known.addAll(more);
            }
    }

    /** Without damage the copy must be served and exported completely: otherwise every damage would count as found. */
    private void requireSoundBefore() throws IOException {
        restore();
        if (exported("no damage") < 1 || served("no damage") || !wrong.isEmpty())
            throw new IllegalStateException("the undamaged log is not sound " + wrong);
    }

    private void restore() throws IOException {
        for (String name : List.of("log.db", "log.db-wal", "anchor"))
            Files.write(damaged.resolve(name), Files.readAllBytes(damaged.resolve(name + ".whole")));
    }

    private void damage(int number) throws IOException {
        restore();
        String file = number % 2 == 0 ? "log.db" : "log.db-wal";
        byte[] whole = Files.readAllBytes(damaged.resolve(file));
        byte[] bytes = whole.clone();
        String kind = spoil(bytes);
        if (kind.equals("tail cut")) bytes = Arrays.copyOf(bytes, bytes.length - 1 - random.nextInt(LONGEST_CUT));
        Files.write(damaged.resolve(file), bytes);
        look(file + ", " + kind, "damage " + number + " (" + kind + " of " + file + ")");
    }

    private String spoil(byte[] bytes) {
        int at = random.nextInt(bytes.length);
        switch (random.nextInt(4)) {
            case 0:
                bytes[at] ^= (byte) (1 << random.nextInt(8));
                return "bit flipped";
            case 1:
                bytes[at] ^= (byte) (1 + random.nextInt(255));
                return "byte changed";
            case 2:
                int sector = at / SECTOR * SECTOR;
                Arrays.fill(bytes, sector, Math.min(bytes.length, sector + SECTOR), (byte) 0);
                return "sector torn";
            default:
                return "tail cut";
        }
    }

    private void look(String kind, String what) {
        Tally tally = tallies.computeIfAbsent(kind, fresh -> new Tally());
        double exported = exported(what);
        boolean found = served(what);
        if (found) {
            tally.found++;
            tally.exported.add(exported);
        } else {
            tally.harmless++;
            if (exported < 1) wrong.add(what + ": served as if sound, exported " + exported);
        }
    }

    /** Exports as the care command would; gives the share of the events. */
    private double exported(String what) {
        Set<String> lines = new HashSet<>();
        events.values()
                .forEach(day -> day.forEach(event ->
                        lines.add(new String(EventEncoder.of(event), java.nio.charset.StandardCharsets.UTF_8))));
        int all = lines.size();
        int[] count = {0};
        try {
            LogMaintenance.export(damaged, Optional.empty(), line -> {
                count[0]++;
                if (!lines.remove(line)) wrong.add(what + ": exported what was never written: " + line);
            });
        } catch (LogFailure nothingReadable) {
            if (count[0] > 0) wrong.add(what + ": ended in the middle: " + nothingReadable.getMessage());
        }
        return (double) count[0] / all;
    }

    /** Opens as a service would and reads everything; whether the damage was noticed. */
    private boolean served(String what) {
        try (SqliteEventLog log = SqliteEventLog.openToServe(damaged)) {
            boolean all = true;
            for (String day : DAYS) all &= readsTrue(log, day, what);
            boolean noticed = log.readOnly().isPresent();
            for (Map.Entry<String, KnownCommand> known : commands.entrySet()) {
                String[] names = known.getKey().split(" ");
                Optional<KnownCommand> told = log.command(names[0], names[1]);
                boolean same = told.isPresent() && same(told.get(), known.getValue());
                if (told.isPresent() && !same && !noticed) wrong.add(what + ": another command than " + known.getKey());
                all &= same;
            }
            if (!all && !noticed) wrong.add(what + ": something is missing and nobody says so");
            return noticed;
        } catch (LogFailure told) {
            return true;
        }
    }

    private static boolean same(KnownCommand one, KnownCommand other) {
        return Arrays.equals(one.requestDigest(), other.requestDigest())
                && one.first() == other.first()
                && one.last() == other.last();
    }

    /** What is read must be what was written, from the beginning; whether it is all. */
    private boolean readsTrue(EventLog log, String day, String what) {
        List<StoredEvent> read = new ArrayList<>();
        List<StoredEvent> page = log.read(day, 0, EventLog.READ_LIMIT);
        while (!page.isEmpty()) {
            read.addAll(page);
            page = log.read(day, read.size(), EventLog.READ_LIMIT);
        }
        List<StoredEvent> right = events.get(day);
        if (read.size() > right.size() || !read.equals(right.subList(0, read.size())))
            wrong.add(what + ": read what was never written");
        return read.size() == right.size();
    }

    private boolean report() {
        int found = 0;
        int harmless = 0;
        for (Map.Entry<String, Tally> kind : tallies.entrySet()) {
            Tally tally = kind.getValue();
            found += tally.found;
            harmless += tally.harmless;
            double[] shares =
                    tally.exported.stream().mapToDouble(share -> share).sorted().toArray();
            String salvaged = shares.length == 0
                    ? ""
                    : String.format(
                            "; of those found %.0f %% of the events exported in the middle, %.0f %% at least",
                            100 * shares[shares.length / 2], 100 * shares[0]);
            System.out.println(
                    "     " + kind.getKey() + ": found " + tally.found + ", harmless " + tally.harmless + salvaged);
        }
        wrong.stream().limit(20).forEach(one -> System.out.println("WRONG " + one));
        System.out.println((wrong.isEmpty() ? "ok   " : "FAIL ") + "silently wrong: " + wrong.size() + " of "
                + (found + harmless) + " damages; found " + found + ", harmless " + harmless);
        return wrong.isEmpty();
    }
}
