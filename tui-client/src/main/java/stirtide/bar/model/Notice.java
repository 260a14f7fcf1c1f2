package stirtide.bar.model;

/**
 * A line for the person at the terminal.
 *
 * @param words what happened
 * @param lasting whether it stays until Escape, else until the next key
 */
public record Notice(String words, boolean lasting) {}
