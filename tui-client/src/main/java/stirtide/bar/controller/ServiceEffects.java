package stirtide.bar.controller;

import stirtide.bar.link.ServiceGateway;
import stirtide.bar.model.UiEffect;

/** Answers that ask something of the service and leave the panel as it is. */
final class ServiceEffects {
    private ServiceEffects() {}

    /** Asks; whether the answer was such a question. */
    static boolean asked(
            UiEffect answer, ServiceGateway outgoing, SignOnTracker signOn, ClockTracker clock, long nanos) {
        if (answer instanceof UiEffect.AskNextPour ask) outgoing.askNextPour(ask.bowl(), ask.poured());
        else if (answer instanceof UiEffect.AskPast) outgoing.askPast();
        else if (answer instanceof UiEffect.SignOn who) outgoing.signOn(who.personId(), who.code());
        else if (answer instanceof UiEffect.SignOff) signOn.signOff("by key");
        else if (answer instanceof UiEffect.Rate rate) drive(rate.ratePermille(), outgoing, clock, nanos);
        else return false;
        return true;
    }

    private static void drive(int ratePermille, ServiceGateway outgoing, ClockTracker clock, long nanos) {
        clock.drive(ratePermille, nanos);
        outgoing.setClockRate(ratePermille);
    }
}
