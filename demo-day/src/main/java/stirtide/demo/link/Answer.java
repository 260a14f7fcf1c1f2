package stirtide.demo.link;

/**
 * The service's answer to a command.
 *
 * @param accepted whether it was accepted
 * @param lastRevision revision of the last event it caused, 0 when refused
 * @param sentence why not, empty when accepted
 */
public record Answer(boolean accepted, long lastRevision, String sentence) {}
