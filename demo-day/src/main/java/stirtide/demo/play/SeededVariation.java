package stirtide.demo.play;

import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import java.util.zip.CRC32;

/**
 * Small deviations from a seed. A value depends on the seed and its subject, never on the order of calls, so an additional
 * client does not change the day of the others.
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
