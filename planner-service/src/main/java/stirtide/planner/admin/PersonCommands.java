package stirtide.planner.admin;

import java.nio.file.Path;
import java.time.Instant;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stirtide.planner.access.AccessFile;
import stirtide.planner.access.AccessList.Person;
import stirtide.planner.access.Role;
import stirtide.planner.cli.CommandException;

/** Gives, lists and removes the codes with which people sign on. A running service applies a change within a second. */
@Command(name = "person", description = "Manages the codes with which people sign on at a terminal.")
final class PersonCommands {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FOLDER", description = "data folder of the service, which may be running")
    private Path folder = Path.of("");

    @Command(name = "code", description = "Gives a person a new code of six digits and prints it, once.")
    void code(
            @Parameters(
                            paramLabel = "PERSON",
                            converter = GrantOptions.Name.class,
                            description = "person id of the salon's files")
                    String person,
            @Mixin GrantOptions grant) {
        if (grant.role() == Role.TERMINAL || grant.role() == Role.SERVICE)
            throw new CommandException(
                    CommandException.USAGE,
                    "a person is not a " + grant.role().word() + "; accepted is assistant, colorist or manager");
        print(new AccessFile(folder).giveCode(person, grant.role(), grant.salon(), Instant.now(), grant.lifetime()));
    }

    @Command(name = "list", description = "Lists who has a code, never the codes themselves.")
    void list() {
        for (Person person : new AccessFile(folder).read().people())
            print(String.join(
                    "  ",
                    person.personId(),
                    person.role().word(),
                    person.salonId().orElse("all salons"),
                    "ends " + person.expires()));
    }

    @Command(name = "remove", description = "Removes the code of a person.")
    void remove(@Parameters(paramLabel = "PERSON", description = "person id, as listed") String person) {
        if (!new AccessFile(folder).takeCode(person))
            throw new CommandException(CommandException.USAGE, "no person named " + person + " has a code");
        print("the code of " + person + " is removed");
    }

    private void print(String line) {
        spec.commandLine().getOut().println(line);
    }
}
