package stirtide.demo.play;

import java.util.Locale;

/** Command ids: the same sequence each time a day is played. */
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
