package stirtide.planner.service;

import java.util.Optional;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.planner.cli.CommandException;
import stirtide.planner.salonfiles.FolderResult;
import stirtide.planner.salonfiles.SalonFolder;

/** The command that opens the day whose files were named at start. */
final class DayOpening {
    private static final String COMMAND_ID = "opened-at-start";
    private static final String ACTOR = "operator";

    private DayOpening() {}

    /**
     * Reads the files, if any were named.
     *
     * @throws CommandException with every problem of the files, one a line
     */
    static Optional<CommandRequest> read(Settings settings) {
        if (settings.salon().isEmpty()) return Optional.empty();
        FolderResult answer = SalonFolder.read(settings.salon().get(), settings.date());
        if (answer instanceof FolderResult.Rejected rejected)
            throw new CommandException(CommandException.BAD_INPUT, String.join("\n", rejected.lines()));
        FolderResult.Read read = (FolderResult.Read) answer;
        return Optional.of(new CommandRequest(COMMAND_ID, ACTOR, new OpenDay(read.setup(), read.bookings())));
    }

    /** Stream id of the day a request opens. */
    static String day(CommandRequest request) {
        OpenDay open = (OpenDay) request.command();
        return open.setup().salon().salonId() + "/" + open.setup().date();
    }
}
