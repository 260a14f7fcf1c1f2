package stirtide.bar.desk;

import java.util.Optional;
import stirtide.bar.entry.Question;
import stirtide.bar.entry.SignOnPanel;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.link.LinkNews;
import stirtide.bar.link.Outgoing;
import stirtide.bar.scene.Operator;
import stirtide.bar.scene.Panel;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;

/** Who works here: signs on and off, and signs off by itself when nobody has pressed a key for long. */
final class SignOnWatch {
    private static final long SECOND_NANOS = 1_000_000_000L;
    private static final long MINUTE_NANOS = 60 * SECOND_NANOS;
    private static final long WARNING_NANOS = 30 * SECOND_NANOS;

    private final Outgoing outgoing;
    private Operator operator;
    private boolean maySignOn = true;
    private long idleNanos;
    private long lastKeyNanos;
    private boolean warned;
    private boolean leaving;

    SignOnWatch(Operator first, Outgoing outgoing, long startNanos) {
        operator = first;
        this.outgoing = outgoing;
        lastKeyNanos = startNanos;
    }

    /** Whether people may sign on here, and after how many minutes without a key they are signed off, 0 for never. */
    void rules(boolean allowed, int idleMinutes) {
        maySignOn = allowed;
        idleNanos = idleMinutes * MINUTE_NANOS;
    }

    Operator operator() {
        return operator;
    }

    void pressed(long nanos) {
        lastKeyNanos = nanos;
        warned = false;
    }

    /** The panel that opens instead of what a key would do once somebody is signed on. */
    Optional<Panel> wanted(Key key, Scene scene) {
        if (operator.signOn() != Operator.SignOn.NEEDED) return Optional.empty();
        return KeyTable.of(scene.pages().page(), true, scene.clockCanBeDriven()).stream()
                .filter(binding -> binding.writes() && binding.matches(key))
                .findFirst()
                .map(binding -> SignOnPanel.of(scene, binding.label() + ": sign on first, then press the key again"));
    }

    /** The answer to the key of signing on and off. */
    PanelAnswer act(Scene scene) {
        return switch (operator.signOn()) {
            case NOT_ASKED -> new PanelAnswer.Say("this service asks nobody to sign on here");
            case NEEDED -> new PanelAnswer.Open(SignOnPanel.of(scene, ""));
            case DONE ->
                new PanelAnswer.Open(new Question(
                        "SIGN OFF?",
                        scene.name(operator.personId()) + " signs off at this terminal. The next person signs on then.",
                        new PanelAnswer.SignOff(),
                        scene.nanos()));
        };
    }

    void signOff(String why) {
        if (leaving) return;
        leaving = true;
        outgoing.signOff(why);
    }

    /** A line to tell, empty for none; a panel that is open hears the rest itself. */
    Optional<String> hear(LinkNews.SignOn news, Scene scene) {
        leaving = false;
        if (!maySignOn) return Optional.empty();
        if (news instanceof LinkNews.SignOn.Needed) operator = Operator.nobody();
        if (news instanceof LinkNews.SignOn.Begun begun) {
            operator = Operator.signedOn(begun.personId(), begun.role());
            pressed(scene.nanos());
            return Optional.of(scene.name(begun.personId()) + " is signed on" + as(begun.role())
                    + others(begun.entriesOfOthers()));
        }
        if (!(news instanceof LinkNews.SignOn.Ended ended)) return Optional.empty();
        String name = scene.name(operator.personId());
        operator = Operator.nobody();
        String kept = ended.waitingEntries() == 0
                ? ""
                : "; " + ended.waitingEntries() + " entries of " + name + " wait for the next sign-on";
        return Optional.of(name + " is signed off: " + ended.why() + kept);
    }

    private static String others(int entries) {
        return entries == 0 ? "" : "; " + entries + " entries of others wait here until they sign on";
    }

    private static String as(String role) {
        return role.isEmpty() ? "" : " as " + role;
    }

    /** What to tell as time goes by, empty for nothing. */
    Optional<String> tick(Scene scene) {
        if (operator.signOn() != Operator.SignOn.DONE || idleNanos == 0) return Optional.empty();
        long idle = scene.nanos() - lastKeyNanos;
        if (idle >= idleNanos) {
            signOff("no key for " + idleNanos / MINUTE_NANOS + " min");
            return Optional.empty();
        }
        if (warned || idle < idleNanos - WARNING_NANOS) return Optional.empty();
        warned = true;
        return Optional.of(scene.name(operator.personId()) + " is signed off in 30 s: Esc keeps the sign-on");
    }
}
