package stirtide.bar.views;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The pictures in the repository are those that {@code tui-client/trials/run pictures} makes. */
class PicturesTest {
    private static final boolean UPDATE = Boolean.getBoolean("pictures.update");
    private static final Path FOLDER = Path.of("../docs/pictures");
    private static final Path README = Path.of("../README.md");
    private static final String BEGIN = "<!-- picture: begin -->\n```\n";
    private static final String END = "```\n<!-- picture: end -->";

    @Test
    void every_picture_is_made_from_its_golden_frame() throws IOException {
        for (var picture : new TreeMap<>(Pictures.FRAMES).entrySet()) {
            Path file = FOLDER.resolve(picture.getKey() + ".svg");
            String made = Pictures.svg(picture.getKey(), picture.getValue());
            if (UPDATE) Files.writeString(file, made);
            assertThat(Files.readString(file)).as(file.toString()).isEqualTo(made);
        }
    }

    @Test
    void the_text_in_the_readme_is_made_from_its_golden_frame() throws IOException {
        String readme = Files.readString(README);
        int begin = readme.indexOf(BEGIN) + BEGIN.length();
        String made = Pictures.text("busy-80x24");
        if (UPDATE)
            Files.writeString(README, readme.substring(0, begin) + made + readme.substring(readme.indexOf(END)));
        assertThat(Files.readString(README)).contains(BEGIN + made + END);
    }

    @Test
    void the_readme_shows_every_picture() throws IOException {
        String readme = Files.readString(README);
        assertThat(Pictures.FRAMES.keySet())
                .allSatisfy(name -> assertThat(readme).contains("(docs/pictures/" + name + ".svg)"));
    }
}
