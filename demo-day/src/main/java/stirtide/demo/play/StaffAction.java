package stirtide.demo.play;

import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;

/**
 * A command and the person who sends it.
 *
 * @param actor person id
 * @param command what is sent to the service
 */
public record StaffAction(String actor, DayCommand command) {
    /** The request to the service, under a command id. */
    public CommandRequest request(String commandId) {
        return new CommandRequest(commandId, actor, command);
    }
}
