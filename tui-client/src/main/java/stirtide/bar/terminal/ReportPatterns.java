package stirtide.bar.terminal;

import com.googlecode.lanterna.input.BasicCharacterPattern;
import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Names what terminals send besides keys, so that its digits never end in a field of grams. */
final class ReportPatterns implements KeyDecodingProfile {
    static final KeyStroke PASTE_BEGINS = new Marker();
    static final KeyStroke PASTE_ENDS = new Marker();
    static final KeyStroke REPORT = new Marker();

    private static final char ESCAPE = 0x1b;
    private static final int LONGEST_MOUSE_REPORT = 24;

    @Override
    public Collection<CharacterPattern> getPatterns() {
        return List.of(
                new BasicCharacterPattern(PASTE_BEGINS, ESCAPE, '[', '2', '0', '0', '~'),
                new BasicCharacterPattern(PASTE_ENDS, ESCAPE, '[', '2', '0', '1', '~'),
                new BasicCharacterPattern(REPORT, ESCAPE, '[', 'I'),
                new BasicCharacterPattern(REPORT, ESCAPE, '[', 'O'),
                ReportPatterns::mouse);
    }

    /** Matches {@code ESC [ < digits and semicolons, M or m}: a mouse report in SGR form. */
    private static CharacterPattern.@Nullable Matching mouse(List<Character> read) {
        char[] head = {ESCAPE, '[', '<'};
        for (int i = 0; i < Math.min(read.size(), head.length); i++) {
            if (read.get(i) != head[i]) return null;
        }
        if (read.size() > LONGEST_MOUSE_REPORT) return null;
        for (int i = head.length; i < read.size(); i++) {
            char letter = read.get(i);
            if (letter == 'M' || letter == 'm') {
                return i == read.size() - 1 ? new CharacterPattern.Matching(REPORT) : null;
            }
            if (letter != ';' && (letter < '0' || letter > '9')) return null;
        }
        return CharacterPattern.Matching.NOT_YET;
    }

    private static final class Marker extends KeyStroke {
        Marker() {
            super(KeyType.Unknown);
        }
    }
}
