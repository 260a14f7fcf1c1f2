package stirtide.planner.admin;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stirtide.planner.access.AccessFailure;
import stirtide.planner.eventlog.EventLog.Damage;
import stirtide.planner.eventlog.LogFailure;
import stirtide.planner.eventlog.LogMaintenance;

/** Looks after a log from the command line. */
public final class CareMain {
    private static final String USAGE = """
            verify FOLDER              tells whether every event is as it was written
            export FOLDER [--day D]    writes the events, one CloudEvent a line, to standard output
            import FILE FOLDER         brings exported events into an empty folder
            backup FOLDER FILE         writes the whole log into one new file
            restore FILE FOLDER [KEYS] brings a backup into an empty folder, with the clients' keys of the folder KEYS
            client FOLDER ...          tells what is kept of a client, and forgets
            token FOLDER ...           makes, lists and takes back tokens
            person FOLDER ...          gives people codes to sign on with, and takes them away
            """;

    private CareMain() {}

    /** Ends with 0, or with the code of the failure after one line on standard error. */
    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
        int code = run(List.of(arguments), out, System.err);
        out.flush();
        System.exit(code);
    }

    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        try {
            return dispatch(arguments, out, err);
        } catch (CareFailure failure) {
            err.println("stirtide: " + failure.getMessage());
            return failure.exitCode();
        } catch (AccessFailure failure) {
            err.println("stirtide: " + failure.getMessage());
            return CareFailure.NO_PLACE;
        } catch (LogFailure failure) {
            err.println("stirtide: " + failure.getMessage());
            return code(failure);
        } catch (InvalidPathException notAPath) {
            err.println("stirtide: not a path: " + notAPath.getInput());
            return CareFailure.USAGE;
        } catch (IOException failed) {
            err.println("stirtide: cannot read or write: " + failed.getMessage());
            return CareFailure.NO_PLACE;
        } catch (RuntimeException fault) {
            err.println("stirtide: a fault of this program ended it: " + fault + "; whoever keeps it wants to know");
            return CareFailure.SOFTWARE;
        }
    }

    private static int dispatch(List<String> words, PrintStream out, PrintStream err) throws IOException {
        String task = words.isEmpty() ? "" : words.get(0);
        if (task.equals("token") || task.equals("person")) return AccessCommands.run(words, Instant.now(), out);
        if (task.equals("verify") && words.size() == 2) return verify(Path.of(words.get(1)), out);
        if (task.equals("export") && words.size() == 2)
            return report(LogMaintenance.export(Path.of(words.get(1)), Optional.empty(), out::println), err);
        if (task.equals("export") && words.size() == 4 && words.get(2).equals("--day"))
            return report(LogMaintenance.export(Path.of(words.get(1)), Optional.of(words.get(3)), out::println), err);
        if (task.equals("client")) return ClientCommands.run(words, out);
        if (task.equals("restore") && words.size() == 4) {
            Backups.restore(Path.of(words.get(1)), Path.of(words.get(2)), Optional.of(Path.of(words.get(3))));
            return 0;
        }
        if (words.size() != 3) throw new CareFailure(CareFailure.USAGE, "accepted are:\n" + USAGE);
        Path from = Path.of(words.get(1));
        Path to = Path.of(words.get(2));
        switch (task) {
            case "import" -> err.println("stirtide: " + EventImport.bring(from, to) + " events brought and verified");
            case "backup" -> Backups.backup(from, to);
            case "restore" -> Backups.restore(from, to, Optional.empty());
            default -> throw new CareFailure(CareFailure.USAGE, "accepted are:\n" + USAGE);
        }
        return 0;
    }

    private static int verify(Path folder, PrintStream out) {
        List<Damage> damages = LogMaintenance.verify(folder);
        if (!damages.isEmpty()) throw new CareFailure(CareFailure.DAMAGED, "damaged: " + damages.get(0));
        out.println("every event is as it was written");
        return 0;
    }

    private static int report(List<Damage> damages, PrintStream err) {
        for (Damage damage : damages) err.println("stirtide: not exported from here on: " + damage);
        return damages.isEmpty() ? 0 : CareFailure.DAMAGED;
    }

    private static int code(LogFailure failure) {
        return switch (failure.kind()) {
            case IN_USE -> CareFailure.IN_USE;
            case NO_PLACE -> CareFailure.NO_PLACE;
            case FULL, UNAVAILABLE, READ_ONLY, DAMAGED -> CareFailure.DAMAGED;
        };
    }
}
