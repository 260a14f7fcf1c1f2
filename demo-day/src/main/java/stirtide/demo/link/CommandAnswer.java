package stirtide.demo.link;

/** Answer of the service to a command. */
public sealed interface CommandAnswer {
    /** The command was accepted. */
    record Accepted() implements CommandAnswer {}

    /** The command was rejected, with the reason as a sentence. */
    record Rejected(String sentence) implements CommandAnswer {}

    /** Whether the command was carried out is unknown. */
    record Undecided(String reason) implements CommandAnswer {}
}
