package stirtide.demo.link;

/**
 * The service's answer to a command.
 *
 * @param accepted whether it was accepted
 * @param sentence why not, empty when accepted
 */
public record Answer(boolean accepted, String sentence) {}
