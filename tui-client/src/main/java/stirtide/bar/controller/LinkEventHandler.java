package stirtide.bar.controller;

import java.util.Optional;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.model.FollowedClock;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/** What a message of the connection to the service changes. */
final class LinkEventHandler {
    private static final String SIGN_ON = "sign-on";

    private final UiModel model;
    private final EffectRunner effects;

    LinkEventHandler(UiModel model, EffectRunner effects) {
        this.model = model;
        this.effects = effects;
    }

    void hear(LinkEvent event, long nanos) {
        if (event instanceof LinkEvent.Seen seen) see(seen.view(), nanos);
        else if (event instanceof LinkEvent.Remembered old) remember(old.view(), nanos);
        else if (event instanceof LinkEvent.Heard) model.link.heard(nanos);
        else if (event instanceof LinkEvent.Cut lost) model.link.cut(lost.why());
        else if (event instanceof LinkEvent.Clock clock) follow(clock, nanos);
        else if (event instanceof LinkEvent.Waiting waiting) model.link.waiting(waiting.entries());
        else if (event instanceof LinkEvent.Taken taken) taken(taken, nanos);
        else if (event instanceof LinkEvent.Refused refused) refused(refused, nanos);
        else if (event instanceof LinkEvent.InForce inForce)
            model.pages = model.setup.received(model.pages, inForce.setup());
        else if (event instanceof LinkEvent.Past past) model.pages = model.pages.loaded(past.days());
        else if (event instanceof LinkEvent.Advised said)
            model.panel.ifPresent(open -> open.hear(said.advice(), said.poured()));
        else if (event instanceof LinkEvent.Tried tried) model.pages = model.pages.with(tried.advice());
        else if (event instanceof LinkEvent.SignOn signOn) signOn(signOn, nanos);
        else if (event instanceof LinkEvent.Trouble trouble) model.notices.add(trouble.words(), true);
        else throw new IllegalStateException("no rule for " + event);
    }

    private void see(DayView newer, long nanos) {
        model.link.heard(nanos);
        model.view = Optional.of(newer);
        model.pages = model.pages.seen(newer);
        model.clock = new FollowedClock(newer.time(), nanos, newer.clockRatePermille());
        model.lookAtAlarms(nanos);
        if (model.pages.page() == KeyContext.SETUP) model.setup.look(newer.revision());
        model.lastMove.seen(newer).ifPresent(words -> model.notices.lasting(words, "last move"));
    }

    private void remember(DayView old, long nanos) {
        if (model.view.isPresent()) return;
        model.view = Optional.of(old);
        // A view from disk stands still: how fast the clock has run since is unknown.
        model.clock = new FollowedClock(old.time(), nanos, 0);
    }

    private void follow(LinkEvent.Clock clock, long nanos) {
        model.clockCanBeDriven = clock.canBeDriven();
        if (model.link.everHeard()) model.clock = new FollowedClock(clock.now(), nanos, clock.ratePermille());
    }

    private void signOn(LinkEvent.SignOn event, long nanos) {
        if (event instanceof LinkEvent.SignOn.Refused refused)
            model.panel.ifPresent(open -> open.signOnRefused(refused.sentence(), refused.waitSeconds(), nanos));
        // What is half typed belongs to who has left.
        boolean ended = event instanceof LinkEvent.SignOn.Ended;
        if (ended) model.panel = Optional.empty();
        model.signOn.hear(event, model.state(nanos)).ifPresent(words -> {
            model.notices.overtake(SIGN_ON);
            if (ended) model.notices.lasting(words, SIGN_ON);
            else model.notices.add(words, false);
        });
    }

    private boolean answeredInPanel(DayCommand command, Optional<String> refusal, long nanos) {
        Optional<UiEffect> wanted = model.panel.flatMap(open -> open.answered(command, refusal));
        wanted.ifPresent(effect -> effects.run(effect, nanos));
        return wanted.isPresent();
    }

    private void taken(LinkEvent.Taken taken, long nanos) {
        answeredInPanel(taken.command(), Optional.empty(), nanos);
        model.notices.taken(taken);
    }

    private void refused(LinkEvent.Refused refused, long nanos) {
        boolean shown = answeredInPanel(refused.command(), Optional.of(refused.sentence()), nanos);
        if (!shown || model.panel.isEmpty()) model.notices.refused(refused);
    }
}
