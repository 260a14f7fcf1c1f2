package stirtide.bar.controller;

import java.util.ArrayList;
import java.util.List;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.model.Notice;

/** The lines for the person at the terminal, newest last; a passing one goes with the next key. */
final class NoticeList {
    private static final int MOST = 5;

    private final List<Notice> notices = new ArrayList<>();
    private boolean pasteTold;

    void add(String words, boolean lasting) {
        pass();
        notices.add(new Notice(words, lasting));
        if (notices.size() > MOST) notices.remove(0);
    }

    /** The service accepted an entry. */
    void taken(LinkEvent.Taken taken) {
        add((taken.afterWaiting() ? "sent after waiting: " : "done: ") + taken.words(), false);
    }

    /** Something was pasted: reported once for each paste. */
    void paste(boolean ends) {
        if (!pasteTold) add("pasted text ignored", false);
        pasteTold = !ends;
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
