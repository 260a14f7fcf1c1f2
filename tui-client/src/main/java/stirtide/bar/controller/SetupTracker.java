package stirtide.bar.controller;

import stirtide.bar.keys.KeyContext;
import stirtide.bar.link.ServiceGateway;
import stirtide.bar.model.ViewState;
import stirtide.events.view.SetupView;

/** Asks what is in force, once a revision: a day in motion is not asked for its setup again and again. */
final class SetupTracker {
    private final ServiceGateway outgoing;
    private long asked = -1;

    SetupTracker(ServiceGateway outgoing) {
        this.outgoing = outgoing;
    }

    /** Another view is shown: what it needs is asked for. */
    void turned(KeyContext from, ViewState next, long revision) {
        boolean daysWanted = next.page() == KeyContext.DAY && from != KeyContext.DAY;
        if (daysWanted && next.past().isEmpty()) outgoing.askPast();
        if (next.page() == KeyContext.SETUP) look(revision);
    }

    void look(long revision) {
        if (asked >= revision) return;
        asked = revision;
        outgoing.askSetup();
    }

    ViewState told(ViewState pages, SetupView setup) {
        asked = Math.max(asked, setup.revision());
        return pages.withSetup(pages.setup().with(setup));
    }
}
