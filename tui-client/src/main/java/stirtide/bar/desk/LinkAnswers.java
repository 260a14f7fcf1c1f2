package stirtide.bar.desk;

import stirtide.bar.link.Outgoing;
import stirtide.bar.scene.PanelAnswer;

/** Answers that ask something of the service and leave the panel as it is. */
final class LinkAnswers {
    private LinkAnswers() {}

    /** Asks; whether the answer was such a question. */
    static boolean asked(PanelAnswer answer, Outgoing outgoing, SignOnWatch signOn, ClockWatch clock, long nanos) {
        if (answer instanceof PanelAnswer.AskNextPour ask) outgoing.askNextPour(ask.bowl(), ask.poured());
        else if (answer instanceof PanelAnswer.AskPast) outgoing.askPast();
        else if (answer instanceof PanelAnswer.SignOn who) outgoing.signOn(who.personId(), who.code());
        else if (answer instanceof PanelAnswer.SignOff) signOn.signOff("by key");
        else if (answer instanceof PanelAnswer.Rate rate) drive(rate.ratePermille(), outgoing, clock, nanos);
        else return false;
        return true;
    }

    private static void drive(int ratePermille, Outgoing outgoing, ClockWatch clock, long nanos) {
        clock.drive(ratePermille, nanos);
        outgoing.setClockRate(ratePermille);
    }
}
