package stirtide.planner.planning.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class MinuteSetTest {
    private final SplittableRandom random = new SplittableRandom(3);

    @Test
    void finds_what_a_plain_set_finds() {
        for (int trial = 0; trial < 200; trial++) {
            long[] set = new long[3];
            for (int i = 0; i < 4; i++) {
                int from = random.nextInt(180);
                MinuteSet.add(set, from, Math.min(192, from + random.nextInt(40)));
            }
            BitSet plain = BitSet.valueOf(set);
            for (int at = 0; at < 192; at++) {
                assertThat(MinuteSet.next(set, at)).isEqualTo(plain.nextSetBit(at));
                assertThat(MinuteSet.previous(set, at)).isEqualTo(plain.previousSetBit(at));
                assertThat(MinuteSet.nextAbsent(set, at)).isEqualTo(Math.min(192, plain.nextClearBit(at)));
                assertThat(MinuteSet.has(set, at)).isEqualTo(plain.get(at));
            }
        }
    }

    @Test
    void finds_where_runs_begin() {
        long[] set = new long[2];
        MinuteSet.add(set, 60, 70);
        MinuteSet.remove(set, 66, 67);
        long[] runs = new long[2];

        MinuteSet.runs(set, 4, runs);

        assertThat(BitSet.valueOf(runs).stream()).containsExactly(60, 61, 62);
    }

    @Test
    void nothing_lies_beyond_the_words() {
        long[] set = new long[1];
        assertThat(MinuteSet.next(set, 64)).isEqualTo(-1);
        assertThat(MinuteSet.previous(set, 1000)).isEqualTo(-1);
        assertThat(MinuteSet.previous(set, -1)).isEqualTo(-1);
    }
}
