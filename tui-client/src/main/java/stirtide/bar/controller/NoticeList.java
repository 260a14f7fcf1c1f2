package stirtide.bar.controller;

import java.util.ArrayList;
import java.util.List;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.model.Notice;

/**
 * The lines for the person at the terminal, newest last. A passing one goes with the next key; a lasting one stays until Esc
 * or until it is overtaken, and can be read again afterwards.
 */
final class NoticeList {
    private static final int MOST = 5;

    private final List<Entry> entries = new ArrayList<>();
    private final List<String> told = new ArrayList<>();
    private boolean pasteTold;

    private record Entry(Notice notice, String about) {}

    void add(String words, boolean lasting) {
        add(words, lasting, "");
    }

    /** A line that is overtaken by the next about the same thing. */
    void lasting(String words, String about) {
        add(words, true, about);
    }

    private void add(String words, boolean lasting, String about) {
        pass();
        overtake(about);
        entries.add(new Entry(new Notice(words, lasting), about));
        if (entries.size() > MOST) entries.remove(0);
        if (!lasting) return;
        told.remove(words);
        told.add(words);
        if (told.size() > MOST) told.remove(0);
    }

    /** The service accepted an entry: why it was refused before holds no more. */
    void taken(LinkEvent.Taken taken) {
        overtake(taken.words());
        add((taken.afterWaiting() ? "sent after waiting: " : "done: ") + taken.words(), false);
    }

    /** The service refused an entry. */
    void refused(LinkEvent.Refused refused) {
        lasting("NOT TAKEN  " + refused.words() + ": " + refused.sentence(), refused.words());
    }

    /** Something is no longer so. */
    void overtake(String about) {
        if (!about.isEmpty()) entries.removeIf(entry -> entry.about().equals(about));
    }

    /** Something was pasted: reported once for each paste. */
    void paste(boolean ends) {
        if (!pasteTold) add("pasted text ignored", false);
        pasteTold = !ends;
    }

    /** A key was pressed. */
    void pass() {
        entries.removeIf(entry -> !entry.notice().lasting());
    }

    void clear() {
        entries.clear();
    }

    List<Notice> all() {
        return entries.stream().map(Entry::notice).toList();
    }

    /** The lasting lines of late, oldest first, those that are gone as well. */
    List<String> told() {
        return List.copyOf(told);
    }
}
