package stirtide.demo.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextPageTest {
    @Test
    void long_text_goes_on_under_itself_and_not_under_its_lead() {
        String page = new TextPage().text("- ", "word ".repeat(30)).toString();
        assertThat(page.lines()).hasSize(2);
        assertThat(page.lines().skip(1)).allSatisfy(line -> assertThat(line).startsWith("  word"));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void no_text_gets_wider_than_the_page(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 200; i++)
            text.append("x".repeat(random.nextInt(1, 120))).append(' ');
        String page = new TextPage().text("lead  ", text.toString()).toString();
        assertThat(page.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(TextPage.COLUMNS));
    }

    @Test
    void cells_that_are_too_long_are_cut_and_marked() {
        assertThat(new TextPage().row(new int[] {6, -5}, "crown foils", "7").toString())
                .isEqualTo("crown~    7\n");
    }

    @Test
    void a_line_that_does_not_fit_is_a_fault_of_the_caller() {
        assertThatIllegalArgumentException().isThrownBy(() -> new TextPage().line("x".repeat(81)));
    }
}
