package stirtide.bar.model;

import java.util.List;
import java.util.Optional;
import stirtide.events.view.DayView;

/**
 * Which rows the next key acts on. A pick follows its bowl, not the number of its row.
 *
 * @param onLive whether the live bowls have the focus, else the queue
 * @param queued picked bowl of the queue, empty text for the first
 * @param live picked live bowl, empty text for the first
 */
public record BowlSelection(boolean onLive, String queued, String live) {
    /** The queue's first bowl. */
    public static final BowlSelection FIRST = new BowlSelection(false, "", "");

    /** The picked bowl to mix. */
    public Optional<DayView.QueuedBowl> queuedIn(DayView view) {
        return view.queued(queued).or(() -> view.queue().stream().findFirst());
    }

    /** The picked live bowl. */
    public Optional<DayView.LiveBowl> liveIn(DayView view) {
        return view.live(live).or(() -> view.live().stream().findFirst());
    }

    /** The other list. */
    public BowlSelection otherList() {
        return new BowlSelection(!onLive, queued, live);
    }

    /** A named bowl, in whichever list it is. */
    public BowlSelection on(String bowl, DayView view) {
        return view.live(bowl).isPresent()
                ? new BowlSelection(true, queued, bowl)
                : new BowlSelection(false, bowl, live);
    }

    /** Some rows further in the focused list; stops at both ends. */
    public BowlSelection moved(int rows, DayView view) {
        List<String> ids = onLive
                ? view.live().stream().map(DayView.LiveBowl::bowl).toList()
                : view.queue().stream().map(row -> row.bowl().bowl()).toList();
        if (ids.isEmpty()) return this;
        int at = Math.max(0, ids.indexOf(onLive ? live : queued));
        String next = ids.get(Math.max(0, Math.min(ids.size() - 1, at + rows)));
        return onLive ? new BowlSelection(true, queued, next) : new BowlSelection(false, next, live);
    }
}
