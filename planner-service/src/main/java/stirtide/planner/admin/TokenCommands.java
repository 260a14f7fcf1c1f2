package stirtide.planner.admin;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stirtide.planner.access.AccessFile;
import stirtide.planner.access.AccessList.Token;
import stirtide.planner.cli.CommandException;

/** Adds, lists and revokes bearer tokens. A running service applies a change within a second. */
@Command(name = "token", description = "Manages the tokens of terminals, people and programs.")
final class TokenCommands {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FOLDER", description = "data folder of the service, which may be running")
    private Path folder = Path.of("");

    @Command(name = "add", description = "Adds a token and prints it, once.")
    void add(
            @Option(
                            names = "--name",
                            required = true,
                            paramLabel = "NAME",
                            converter = GrantOptions.Name.class,
                            description = "person id of the salon's files, or a name for the terminal or program")
                    String name,
            @Mixin GrantOptions grant) {
        print(new AccessFile(folder)
                .make(name, grant.role(), grant.salon(), Instant.now(), grant.lifetime())
                .token());
    }

    @Command(name = "list", description = "Lists who has which token, never the tokens themselves.")
    void list() {
        Instant now = Instant.now();
        Map<String, Instant> uses = new AccessFile(folder).lastUses();
        for (Token token : new AccessFile(folder).read().tokens())
            print(String.join(
                    "  ",
                    token.tokenId(),
                    token.name(),
                    token.role().word(),
                    token.salonId().orElse("all salons"),
                    token.revoked().isPresent() ? "revoked" : token.expires().isAfter(now) ? "good" : "ended",
                    "ends " + token.expires(),
                    Optional.ofNullable(uses.get(token.tokenId()))
                            .map(at -> "used " + at)
                            .orElse("never used")));
    }

    @Command(name = "revoke", description = "Revokes a token.")
    void revoke(@Parameters(paramLabel = "TOKEN-ID", description = "id of the token, as listed") String id) {
        if (!new AccessFile(folder).revoke(id, Instant.now()))
            throw new CommandException(CommandException.USAGE, "there is no token " + id);
        print("token " + id + " is revoked");
    }

    private void print(String line) {
        spec.commandLine().getOut().println(line);
    }
}
