package stirtide.bar.desk;

import stirtide.bar.keys.Place;
import stirtide.bar.link.Outgoing;
import stirtide.bar.scene.Pages;
import stirtide.events.view.SetupView;

/** Asks what is in force, once a revision: a day in motion is not asked for its setup again and again. */
final class SetupWatch {
    private final Outgoing outgoing;
    private long asked = -1;

    SetupWatch(Outgoing outgoing) {
        this.outgoing = outgoing;
    }

    /** Another view is shown: what it needs is asked for. */
    void turned(Place from, Pages next, long revision) {
        boolean daysWanted = next.page() == Place.DAY && from != Place.DAY;
        if (daysWanted && next.past().isEmpty()) outgoing.askPast();
        if (next.page() == Place.SETUP) look(revision);
    }

    void look(long revision) {
        if (asked >= revision) return;
        asked = revision;
        outgoing.askSetup();
    }

    Pages told(Pages pages, SetupView setup) {
        asked = Math.max(asked, setup.revision());
        return pages.with(pages.setup().with(setup));
    }
}
