package stirtide.bar.scale;

/** One word of a scale. */
public sealed interface ScaleReading {
    /** A weight in milligrams; {@code stable} when the scale says that it has come to rest. */
    record Weight(int milligrams, boolean stable) implements ScaleReading {}

    /** Nothing that can be taken, with what to do about it. */
    record Unusable(String sentence) implements ScaleReading {}
}
