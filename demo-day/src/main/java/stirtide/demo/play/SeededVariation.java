package stirtide.demo.play;

import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import java.util.zip.CRC32;

/**
 * Small deviations from a seed. Each answer depends on the seed and on what it is asked for, never on the order of
 * questions, so one more client does not change the day of the others.
 *
 * @param seed any number
 */
public record SeededVariation(long seed) {
    /** A whole number from {@code low} to {@code high}, both included. */
    public int between(String about, int low, int high) {
        CRC32 mixed = new CRC32();
        mixed.update(about.getBytes(StandardCharsets.UTF_8));
        return new SplittableRandom(seed * 31 + mixed.getValue()).nextInt(low, high + 1);
    }
}
