package stirtide.bar;

/** Does nothing: the trials measure a start of the terminal against it. */
final class EmptyProgram {
    private EmptyProgram() {}

    public static void main(String[] arguments) {
        // Nothing to do.
    }
}
