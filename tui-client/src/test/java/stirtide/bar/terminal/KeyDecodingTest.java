package stirtide.bar.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.input.DefaultKeyDecodingProfile;
import com.googlecode.lanterna.input.InputDecoder;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stirtide.bar.keys.Key;

/** Bytes as terminals send them. */
class KeyDecodingTest {
    private static List<Key> decode(String bytes) throws IOException {
        var decoder = new InputDecoder(new StringReader(bytes));
        decoder.addProfile(new DefaultKeyDecodingProfile());
        decoder.addProfile(new ReportPatterns());
        var keys = new ArrayList<Key>();
        while (true) {
            KeyStroke stroke = decoder.getNextCharacter(true);
            if (stroke.getKeyType() == KeyType.EOF) return keys;
            keys.add(KeyReader.translate(stroke, 0));
        }
    }

    private static List<Key.Kind> kinds(String bytes) throws IOException {
        return decode(bytes).stream().map(Key::kind).toList();
    }

    @Test
    void a_marked_paste_has_a_beginning_and_an_end() throws IOException {
        assertThat(kinds("\033[200~1\n\033[201~"))
                .containsExactly(Key.Kind.PASTE_BEGINS, Key.Kind.CHARACTER, Key.Kind.ENTER, Key.Kind.PASTE_ENDS);
    }

    @Test
    void mouse_and_focus_reports_leave_no_digit_behind() throws IOException {
        assertThat(kinds("\033[<0;10;5M\033[<35;120;36m\033[I\033[O\033[24;80R"))
                .containsOnly(Key.Kind.REPORT);
    }

    @Test
    void arrows_and_controls_are_told_apart() throws IOException {
        assertThat(kinds("\033[A\033[B\t\033[Z\177"))
                .containsExactly(Key.Kind.UP, Key.Kind.DOWN, Key.Kind.TAB, Key.Kind.BACK_TAB, Key.Kind.ERASE);
        assertThat(decode("\003\014")).containsExactly(Key.control('c', 0), Key.control('l', 0));
    }
}
