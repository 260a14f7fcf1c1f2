package stirtide.bar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stirtide.bar.cli.OptionsReader;
import stirtide.bar.views.ScreenView;

class SnapshotPrinterTest {
    @Test
    void a_printed_picture_is_plain_text_of_its_size() {
        var answer = OptionsReader.read(List.of("--day", Samples.DAY), Map.of(), ".");
        var options = ((OptionsReader.Answer.Understood) answer).options();
        String picture = SnapshotPrinter.picture(Samples.busy(), options);
        assertThat(picture.lines())
                .hasSizeLessThanOrEqualTo(24)
                .allSatisfy(row -> assertThat(row).hasSizeLessThanOrEqualTo(80));
        assertThat(picture.chars().filter(letter -> letter < ' ' && letter != '\n'))
                .isEmpty();
        assertThat(picture).contains("NEXT MIX").endsWith("\n");
        assertThat(ScreenView.LEAST_COLUMNS).isEqualTo(80);
    }
}
