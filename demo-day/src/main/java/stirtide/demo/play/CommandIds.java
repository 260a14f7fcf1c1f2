package stirtide.demo.play;

import java.util.Locale;

/** Ids of commands: the same day played twice sends the same ids in the same order. */
public final class CommandIds {
    private final String prefix;
    private int last;

    /** @param prefix start of every id, short */
    public CommandIds(String prefix) {
        this.prefix = prefix;
    }

    /** The next id. */
    public String next() {
        last++;
        return String.format(Locale.ROOT, "%s-%06d", prefix, last);
    }
}
