package stirtide.bar.controller;

import java.util.Optional;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.link.ServiceGateway;
import stirtide.bar.model.Operator;
import stirtide.bar.model.Panel;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.ConfirmPanel;
import stirtide.bar.panels.SignOnPanel;

/** Who works here: signs on and off, and signs off by itself when nobody has pressed a key for long. */
final class SignOnTracker {
    private static final long SECOND_NANOS = 1_000_000_000L;
    private static final long MINUTE_NANOS = 60 * SECOND_NANOS;
    private static final long WARNING_NANOS = 30 * SECOND_NANOS;

    private final ServiceGateway outgoing;
    private Operator operator;
    private boolean maySignOn = true;
    private long idleNanos;
    private long lastKeyNanos;
    private boolean warned;
    private boolean leaving;

    SignOnTracker(Operator first, ServiceGateway outgoing, long startNanos) {
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
    Optional<Panel> wanted(Key key, UiState scene) {
        if (operator.signOn() != Operator.SignOn.NEEDED) return Optional.empty();
        return KeyTable.of(scene.pages().page(), true, scene.clockCanBeDriven()).stream()
                .filter(binding -> binding.writes() && binding.matches(key))
                .findFirst()
                .map(binding -> SignOnPanel.of(scene, binding.label() + ": sign on first, then press the key again"));
    }

    /** The answer to the key of signing on and off. */
    UiEffect act(UiState scene) {
        return switch (operator.signOn()) {
            case NOT_ASKED -> new UiEffect.Say("this service asks nobody to sign on here");
            case NEEDED -> new UiEffect.Open(SignOnPanel.of(scene, ""));
            case DONE ->
                new UiEffect.Open(new ConfirmPanel(
                        "SIGN OFF?",
                        scene.name(operator.personId()) + " signs off at this terminal. The next person signs on then.",
                        new UiEffect.SignOff(),
                        scene.nanos()));
        };
    }

    void signOff(String why) {
        if (leaving) return;
        leaving = true;
        outgoing.signOff(why);
    }

    /** A line to tell, empty for none; a panel that is open hears the rest itself. */
    Optional<String> hear(LinkEvent.SignOn news, UiState scene) {
        leaving = false;
        if (!maySignOn) return Optional.empty();
        if (news instanceof LinkEvent.SignOn.Needed) operator = Operator.nobody();
        if (news instanceof LinkEvent.SignOn.Begun begun) {
            operator = Operator.signedOn(begun.personId(), begun.role());
            pressed(scene.nanos());
            return Optional.of(scene.name(begun.personId()) + " is signed on" + as(begun.role())
                    + others(begun.entriesOfOthers()));
        }
        if (!(news instanceof LinkEvent.SignOn.Ended ended)) return Optional.empty();
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
    Optional<String> tick(UiState scene) {
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
