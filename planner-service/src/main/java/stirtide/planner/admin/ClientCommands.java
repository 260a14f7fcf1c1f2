package stirtide.planner.admin;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.ContractJson;
import stirtide.planner.cli.CommandException;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.history.ClientRecords;
import stirtide.planner.day.state.Day;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.SqliteEventLog;
import stirtide.planner.http.AdminServer;
import stirtide.planner.privacy.ClientExport;
import stirtide.planner.privacy.ClientKeys;

/** Exports and erases the data of a client: through the service if one runs on the folder, else on its files. */
@Command(name = "client", description = "Exports or erases what is kept of a client; the service may be running.")
final class ClientCommands {
    private static final String REFERENCE = "the client's reference as booked, or - to read it from standard input";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FOLDER", description = "data folder of the service")
    private Path folder = Path.of("");

    @Command(name = "export", description = "Prints what is kept of a client, as JSON.")
    void export(@Parameters(paramLabel = "REFERENCE", description = REFERENCE) String word) throws IOException {
        String reference = reference(word);
        Optional<String> online = AdminClient.post(folder, AdminServer.EXPORT, Map.of("clientRef", reference));
        print(online.isPresent() ? online.get() : exportOffline(reference));
    }

    @SuppressWarnings("try")
    @Command(name = "erase", description = "Destroys what identifies a client; this cannot be undone.")
    void erase(@Parameters(paramLabel = "REFERENCE", description = REFERENCE) String word) throws IOException {
        String reference = reference(word);
        if (AdminClient.post(folder, AdminServer.ERASURE, Map.of("clientRef", reference))
                .isPresent()) {
            print("erased");
            return;
        }
        // The open log keeps a service from starting meanwhile.
        try (EventLog log = open()) {
            ClientKeys keys = new ClientKeys(folder);
            keys.forget(keys.find(reference).orElseThrow(ClientCommands::unknown));
            keys.write(keys.snapshot());
            print("erased; the days record it when the service starts next");
        }
    }

    /** The words of a command are visible to other users of the machine; standard input is not. */
    private String reference(String word) throws IOException {
        if (!word.equals("-")) return word;
        String line = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)).readLine();
        if (line == null || line.isBlank())
            throw new ParameterException(spec.commandLine(), "standard input holds no reference");
        return line;
    }

    private String exportOffline(String reference) throws IOException {
        try (EventLog log = open()) {
            ClientKeys keys = new ClientKeys(folder);
            String id = keys.find(reference).orElseThrow(ClientCommands::unknown);
            List<ClientRecords.DayRecord> kept = new ArrayList<>();
            for (String day : log.days())
                ClientRecords.record(day, replayed(log, day), id).ifPresent(kept::add);
            return keys.shown(ContractJson.write(new ClientExport(reference, kept)));
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

    private EventLog open() {
        if (!Files.isRegularFile(folder.resolve("log.db")))
            throw new CommandException(
                    CommandException.CANNOT_CREATE, folder + " holds no log; name the data folder of a service");
        return SqliteEventLog.openToServe(folder);
    }

    private static CommandException unknown() {
        return new CommandException(
                CommandException.BAD_INPUT, "nothing is kept under this reference; write it as it was booked");
    }

    private void print(String line) {
        spec.commandLine().getOut().println(line);
    }
}
