package stirtide.bar.controller;

import java.util.Optional;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.LinkStatus;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.ViewState;
import stirtide.events.view.DayView;

/** Does what panels and keys ask for. */
final class EffectRunner {
    private final UiModel model;
    private final LocalServices local;

    EffectRunner(UiModel model, LocalServices local) {
        this.model = model;
        this.local = local;
    }

    void run(UiEffect effect, long nanos) {
        if (effect instanceof UiEffect.Stay) return;
        if (effect instanceof UiEffect.Close) model.panel = Optional.empty();
        else if (effect instanceof UiEffect.Open open) model.panel = Optional.of(open.next());
        else if (effect instanceof UiEffect.Send send) send(send, nanos);
        else if (effect instanceof UiEffect.SendAll all) all.sends().forEach(one -> send(one, nanos));
        else if (effect instanceof UiEffect.Notify say) say(say.words());
        else if (effect instanceof UiEffect.ShowView turn) turn(turn.pages());
        else if (effect instanceof UiEffect.SelectBowl pick) pick(pick.bowl());
        else if (effect instanceof UiEffect.Ask ask) ask(ask, nanos);
        else if (effect instanceof UiEffect.AskNextPour ask) model.service.askNextPour(ask.bowl(), ask.poured());
        else if (effect instanceof UiEffect.LoadPastDays) model.service.askPast();
        else if (effect instanceof UiEffect.SignOn who) model.service.signOn(who.personId(), who.code());
        else if (effect instanceof UiEffect.SignOff) model.signOn.signOff("by key");
        else if (effect instanceof UiEffect.SetClockRate rate) drive(rate.ratePermille(), nanos);
        else if (effect instanceof UiEffect.AcknowledgeAlarms seen) acknowledge(seen, nanos);
        else if (effect instanceof UiEffect.ShelveAlarms shelve) shelve(shelve, nanos);
        else if (effect instanceof UiEffect.CopyText copy) say(local.copy(copy.text()));
        else if (effect instanceof UiEffect.ExportDay export) say(local.export(export.view(), export.past()));
        else if (effect instanceof UiEffect.WriteSetupFiles files) say(local.writeFiles(files.setup()));
        else if (effect instanceof UiEffect.Quit) model.leaving = true;
        else throw new IllegalStateException("no rule for " + effect);
    }

    private void say(String words) {
        model.notices.add(words, false);
    }

    private void send(UiEffect.Send send, long nanos) {
        model.panel = send.next();
        model.lastMove.sent(send.command(), model.view);
        model.pages = model.pages.sent(send.command(), model.view);
        boolean live = model.link.line(nanos).state() == LinkStatus.State.LIVE;
        say((live ? "sent: " : "waits to be sent: ") + send.words());
        model.service.send(model.signOn.operator().personId(), send.command(), send.words());
    }

    private void turn(ViewState next) {
        model.setup.turned(
                model.pages.page(), next, model.view.map(DayView::revision).orElse(0L));
        model.pages = next;
    }

    private void pick(String bowl) {
        model.panel = Optional.empty();
        model.view.ifPresent(day -> model.picks = model.picks.on(bowl, day));
    }

    private void ask(UiEffect.Ask ask, long nanos) {
        var inquiry = new Inquiry(ask.ask(), nanos, Optional.empty());
        model.pages = model.pages.with(inquiry);
        model.panel = Optional.of(ask.next());
        model.service.ask(inquiry);
    }

    private void drive(int ratePermille, long nanos) {
        model.clock = model.clock.atRate(ratePermille, nanos);
        model.service.setClockRate(ratePermille);
    }

    private void acknowledge(UiEffect.AcknowledgeAlarms seen, long nanos) {
        String personId = model.signOn.operator().personId();
        say(model.alarms.seen(seen.alarms(), personId, model.clock.at(nanos), model.service));
    }

    private void shelve(UiEffect.ShelveAlarms shelve, long nanos) {
        model.panel = Optional.empty();
        say(model.alarms.shelve(shelve.alarmIds(), shelve.minutes(), model.clock.at(nanos)));
    }
}
