package stirtide.bar.scene;

/**
 * Who works at this terminal.
 *
 * @param personId person the commands are sent for, empty text when nobody signed on
 * @param mayWrite whether commands may be sent at all
 */
public record Operator(String personId, boolean mayWrite) {}
