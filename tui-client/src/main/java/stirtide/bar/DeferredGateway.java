package stirtide.bar;

import org.jspecify.annotations.Nullable;
import stirtide.bar.link.ServiceGateway;
import stirtide.bar.model.Inquiry;
import stirtide.events.command.DayCommand;

/** The desk is made before the link, so that the first frame waits for nothing; keys come only after it. */
final class DeferredGateway implements ServiceGateway {
    private @Nullable ServiceGateway link;

    void reach(ServiceGateway reached) {
        link = reached;
    }

    @Override
    public void send(String personId, DayCommand command, String words) {
        if (link != null) link.send(personId, command, words);
    }

    @Override
    public void askNextPour(String bowl, String poured) {
        if (link != null) link.askNextPour(bowl, poured);
    }

    @Override
    public void setClockRate(int ratePermille) {
        if (link != null) link.setClockRate(ratePermille);
    }

    @Override
    public void ask(Inquiry advice) {
        if (link != null) link.ask(advice);
    }

    @Override
    public void askSetup() {
        if (link != null) link.askSetup();
    }

    @Override
    public void askPast() {
        if (link != null) link.askPast();
    }

    @Override
    public void signOn(String personId, String code) {
        if (link != null) link.signOn(personId, code);
    }

    @Override
    public void signOff(String why) {
        if (link != null) link.signOff(why);
    }
}
