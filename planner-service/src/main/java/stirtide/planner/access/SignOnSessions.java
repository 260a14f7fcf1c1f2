package stirtide.planner.access;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The sign-ons in force: one person at each terminal at a time. Held in memory only; a restart ends them all. */
final class SignOnSessions {
    private static final Duration LONGEST = Duration.ofHours(10);

    private final Map<String, SignOn> byTerminalToken = new HashMap<>();

    private record SignOn(String sha256, Caller caller) {}

    SignOnResult begin(Caller terminal, AccessList.Person person, Instant now) {
        String token = "stis_" + Secrets.token();
        String digest = Secrets.sha256(token);
        Caller caller = new Caller(
                terminal.key() + "/" + digest.substring(0, 12),
                Optional.of(person.role()),
                person.personId(),
                person.salonId().or(terminal::salonId),
                Optional.of(earliest(now.plus(LONGEST), person.expires(), terminal.expires())),
                Optional.of(terminal.actor()));
        byTerminalToken.put(terminal.key(), new SignOn(digest, caller));
        return new SignOnResult.SignedOn(token, caller);
    }

    private static Instant earliest(Instant one, Instant other, Optional<Instant> third) {
        Instant first = one.isBefore(other) ? one : other;
        return third.filter(end -> end.isBefore(first)).orElse(first);
    }

    static String terminalToken(Caller signedOn) {
        return signedOn.key().substring(0, signedOn.key().indexOf('/'));
    }

    Optional<Caller> find(String token) {
        String digest = Secrets.sha256(token);
        Optional<Caller> found = Optional.empty();
        for (SignOn signOn : byTerminalToken.values())
            if (Secrets.same(digest, signOn.sha256)) found = Optional.of(signOn.caller);
        return found;
    }

    boolean lives(Caller caller) {
        SignOn known = byTerminalToken.get(terminalToken(caller));
        return known != null && known.caller.key().equals(caller.key());
    }

    void end(Caller caller) {
        if (lives(caller)) byTerminalToken.remove(terminalToken(caller));
    }
}
