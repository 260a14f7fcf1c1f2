package stirtide.events.command;

/**
 * A command as it is sent. Sending the same request twice has the effect of sending it once.
 *
 * @param commandId id chosen by the sender, 8 to 64 characters; the same id with another body is refused
 * @param actor person id of who asks
 * @param command what is asked for
 */
public record CommandRequest(String commandId, String actor, DayCommand command) {}
