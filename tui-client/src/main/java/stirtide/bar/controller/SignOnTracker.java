package stirtide.bar.controller;

import java.util.Optional;
import java.util.function.Supplier;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.link.ServiceGateway;
import stirtide.bar.model.Operator;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.SignOnPanel;
import stirtide.bar.panels.form.ConfirmPanel;

/** Who works here: sign-on, sign-off, and the automatic sign-off after a time without keys. */
final class SignOnTracker {
    private static final long SECOND_NANOS = 1_000_000_000L;
    private static final long MINUTE_NANOS = 60 * SECOND_NANOS;
    private static final long WARNING_NANOS = 30 * SECOND_NANOS;

    private final Supplier<ServiceGateway> service;
    private Operator operator;
    private boolean maySignOn = true;
    private long idleNanos;
    private long lastKeyNanos;
    private boolean warned;
    private boolean leaving;

    SignOnTracker(Operator first, Supplier<ServiceGateway> service, long startNanos) {
        operator = first;
        this.service = service;
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

    /** The sign-on panel, for a key that needs a person to be signed on; empty for other keys. */
    Optional<Panel> wanted(Key key, UiState state) {
        if (operator.signOn() != Operator.SignOn.NEEDED) return Optional.empty();
        return KeyTable.of(state.pages().page(), true, state.clock().canBeDriven()).stream()
                .filter(binding -> binding.writes() && binding.matches(key))
                .findFirst()
                .map(binding -> SignOnPanel.of(state, binding.label() + ": sign on first, then press the key again"));
    }

    /** The answer to the key of signing on and off. */
    UiEffect act(UiState state) {
        return switch (operator.signOn()) {
            case NOT_ASKED -> new UiEffect.Notify("this service needs no sign-on");
            case NEEDED -> new UiEffect.Open(SignOnPanel.of(state, ""));
            case DONE ->
                new UiEffect.Open(new ConfirmPanel(
                        "SIGN OFF?",
                        state.name(operator.personId()) + " signs off at this terminal. The next person signs on then.",
                        new UiEffect.SignOff(),
                        state.nanos()));
        };
    }

    void signOff(String why) {
        if (leaving) return;
        leaving = true;
        service.get().signOff(why);
    }

    /** The notice to show, empty for none. */
    Optional<String> hear(LinkEvent.SignOn news, UiState state) {
        leaving = false;
        if (!maySignOn) return Optional.empty();
        if (news instanceof LinkEvent.SignOn.Needed) operator = Operator.signOnNeeded();
        if (news instanceof LinkEvent.SignOn.Begun begun) {
            operator = Operator.signedOn(begun.personId(), begun.role());
            pressed(state.nanos());
            return Optional.of(state.name(begun.personId()) + " is signed on" + as(begun.role())
                    + others(begun.entriesOfOthers()));
        }
        if (!(news instanceof LinkEvent.SignOn.Ended ended)) return Optional.empty();
        String name = state.name(operator.personId());
        operator = Operator.signOnNeeded();
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

    /** Checks the idle time; returns the notice to show, empty for none. */
    Optional<String> tick(UiState state) {
        if (operator.signOn() != Operator.SignOn.DONE || idleNanos == 0) return Optional.empty();
        long idle = state.nanos() - lastKeyNanos;
        if (idle >= idleNanos) {
            signOff("no key for " + idleNanos / MINUTE_NANOS + " min");
            return Optional.empty();
        }
        if (warned || idle < idleNanos - WARNING_NANOS) return Optional.empty();
        warned = true;
        return Optional.of(state.name(operator.personId()) + " is signed off in 30 s: Esc keeps the sign-on");
    }
}
