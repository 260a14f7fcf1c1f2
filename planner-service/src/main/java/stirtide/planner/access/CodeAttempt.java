package stirtide.planner.access;

import java.time.Duration;
import java.util.Optional;

/**
 * A code that was typed at a terminal.
 *
 * @param terminal where
 * @param person whose code it should be, empty for an unknown person
 * @param code what was typed
 * @param waiting how long no code is looked at, zero for now
 */
public record CodeAttempt(Caller terminal, Optional<AccessList.Person> person, String code, Duration waiting) {
    private static final String UNKNOWN_SALT = "00".repeat(16);

    /** Whether the code is right; takes some tenths of a second, for an unknown person too. */
    public boolean right() {
        if (!waiting.isZero()) return false;
        String salt = person.map(AccessList.Person::salt).orElse(UNKNOWN_SALT);
        int rounds = person.map(AccessList.Person::rounds).orElse(Secrets.ROUNDS);
        String digest = Secrets.pbkdf2(code, salt, rounds);
        return person.isPresent() && Secrets.same(digest, person.get().digest());
    }

    @Override
    public String toString() {
        return "a code at " + terminal.actor();
    }
}
