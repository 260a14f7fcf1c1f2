package stirtide.bar.controller;

import java.util.function.Supplier;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.link.ServiceGateway;
import stirtide.bar.model.ViewState;
import stirtide.events.view.SetupView;

/** Asks what is in force, once a revision: a day in motion is not asked for its setup again and again. */
final class SetupTracker {
    private final Supplier<ServiceGateway> service;
    private long asked = -1;

    SetupTracker(Supplier<ServiceGateway> service) {
        this.service = service;
    }

    /** Another view is shown: what it needs is asked for. */
    void turned(KeyContext from, ViewState next, long revision) {
        boolean daysWanted = next.page() == KeyContext.DAY && from != KeyContext.DAY;
        if (daysWanted && next.past().isEmpty()) service.get().askPast();
        if (next.page() == KeyContext.SETUP) look(revision);
    }

    void look(long revision) {
        if (asked >= revision) return;
        asked = revision;
        service.get().askSetup();
    }

    ViewState received(ViewState pages, SetupView setup) {
        asked = Math.max(asked, setup.revision());
        return pages.withSetup(pages.setup().with(setup));
    }
}
