package stirtide.demo.play;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeededVariationTest {
    @ParameterizedTest
    @ValueSource(longs = {0, 1, -7, 20270611, Long.MAX_VALUE})
    void answers_stay_between_their_ends_and_reach_both(long seed) {
        var seen = new java.util.TreeSet<Integer>();
        for (int i = 0; i < 300; i++) seen.add(new SeededVariation(seed).between("bowl " + i, -2, 2));
        assertThat(seen).containsExactly(-2, -1, 0, 1, 2);
    }

    @Test
    void the_same_question_gets_the_same_answer_whatever_was_asked_before() {
        SeededVariation one = new SeededVariation(5);
        SeededVariation other = new SeededVariation(5);
        other.between("something else", 0, 1000);
        assertThat(other.between("bowl 3a", 0, 1_000_000)).isEqualTo(one.between("bowl 3a", 0, 1_000_000));
    }
}
