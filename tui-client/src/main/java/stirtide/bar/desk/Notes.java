package stirtide.bar.desk;

import java.util.ArrayList;
import java.util.List;
import stirtide.bar.scene.Notice;

/** The lines for the person at the terminal, newest last; a passing one goes with the next key. */
final class Notes {
    private static final int MOST = 5;

    private final List<Notice> notices = new ArrayList<>();

    void add(String words, boolean lasting) {
        pass();
        notices.add(new Notice(words, lasting));
        if (notices.size() > MOST) notices.remove(0);
    }

    /** A key was pressed. */
    void pass() {
        notices.removeIf(notice -> !notice.lasting());
    }

    void clear() {
        notices.clear();
    }

    List<Notice> all() {
        return List.copyOf(notices);
    }
}
