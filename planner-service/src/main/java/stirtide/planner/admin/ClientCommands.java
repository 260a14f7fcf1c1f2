package stirtide.planner.admin;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.ContractJson;
import stirtide.planner.admin.ErrandAnswer.Outcome;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.history.ClientRecords;
import stirtide.planner.day.state.Day;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.SqliteEventLog;
import stirtide.planner.privacy.ClientKeys;

/** Tells what is kept of a client, and forgets: through the service if one runs on the folder, else on its files. */
final class ClientCommands {
    private static final String ACCEPTED = """
            accepted are:
            client FOLDER export REFERENCE   what is kept of a client, as JSON
            client FOLDER erase REFERENCE    destroys what says who a client is; cannot be undone
            REFERENCE as it was booked, or - to read it from standard input
            """;

    private final Path folder;
    private final String reference;
    private final PrintStream out;

    private ClientCommands(Path folder, String reference, PrintStream out) {
        this.folder = folder;
        this.reference = reference;
        this.out = out;
    }

    static int run(List<String> words, PrintStream out) throws IOException {
        if (words.size() != 4) throw new CareFailure(CareFailure.USAGE, ACCEPTED);
        ClientCommands tasks = new ClientCommands(Path.of(words.get(1)), reference(words.get(3)), out);
        switch (words.get(2)) {
            case "export" -> tasks.export();
            case "erase" -> tasks.erase();
            default -> throw new CareFailure(CareFailure.USAGE, ACCEPTED);
        }
        return 0;
    }

    /** Words of a command can be seen by others on the machine; standard input cannot. */
    private static String reference(String word) throws IOException {
        if (!word.equals("-")) return word;
        String line = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)).readLine();
        if (line == null || line.isBlank()) throw new CareFailure(CareFailure.USAGE, "no reference came; " + ACCEPTED);
        return line;
    }

    /** What a person may ask to see, written as the service writes it. */
    record Kept(String clientRef, List<ClientRecords.DayRecord> days) {}

    private void export() throws IOException {
        Optional<ErrandAnswer> answer = AdminClient.ask(folder, new Errand(Errand.CLIENT_EXPORT, reference));
        out.println(answer.isPresent() ? Errands.done(answer.get()) : exportStopped());
    }

    private String exportStopped() throws IOException {
        try (EventLog log = open()) {
            ClientKeys keys = new ClientKeys(folder);
            String id = keys.find(reference).orElseThrow(ClientCommands::unknown);
            List<ClientRecords.DayRecord> kept = new ArrayList<>();
            for (String day : log.days())
                ClientRecords.record(day, replayed(log, day), id).ifPresent(kept::add);
            return keys.shown(ContractJson.write(new Kept(reference, kept)));
        }
    }

    private static Day replayed(EventLog log, String name) {
        Day day = Day.UNOPENED;
        List<StoredEvent> page = log.read(name, 0, EventLog.READ_LIMIT);
        while (!page.isEmpty()) {
            for (StoredEvent event : page) day = Evolver.evolve(day, event);
            page = log.read(name, day.revision(), EventLog.READ_LIMIT);
        }
        return day;
    }

    private void erase() throws IOException {
        Optional<ErrandAnswer> answer = AdminClient.ask(folder, new Errand(Errand.CLIENT_ERASE, reference));
        if (answer.isPresent()) {
            Errands.done(answer.get());
            out.println("forgotten");
            return;
        }
        // Open while this works, so that no service starts meanwhile.
        EventLog log = open();
        try {
            ClientKeys keys = new ClientKeys(folder);
            keys.forget(keys.find(reference).orElseThrow(ClientCommands::unknown));
            keys.write(keys.snapshot());
            out.println("forgotten; the days note it when the service starts next");
        } finally {
            log.close();
        }
    }

    private EventLog open() {
        if (!Files.isRegularFile(folder.resolve("log.db")))
            throw new CareFailure(CareFailure.NO_PLACE, folder + " holds no log; name the data folder of a service");
        return SqliteEventLog.openToServe(folder);
    }

    private static CareFailure unknown() {
        return new CareFailure(CareFailure.BAD_FILE, "nothing is kept under this reference; write it as it was booked");
    }

    /** Answers of a running service. */
    static final class Errands {
        private Errands() {}

        static String done(ErrandAnswer answer) {
            if (answer.outcome() == Outcome.DONE) return answer.text();
            throw new CareFailure(
                    answer.outcome() == Outcome.UNKNOWN ? CareFailure.BAD_FILE : CareFailure.DAMAGED, answer.text());
        }
    }
}
