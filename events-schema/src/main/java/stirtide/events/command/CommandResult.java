package stirtide.events.command;

/**
 * The answer to an accepted command.
 *
 * @param commandId id of the command
 * @param firstRevision revision of the first event it caused
 * @param lastRevision revision of the last event it caused
 * @param repeated true when the command had been accepted before and nothing new happened
 */
public record CommandResult(String commandId, long firstRevision, long lastRevision, boolean repeated) {}
