package stirtide.planner.access;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Authenticates callers by token or sign-on. Confined to one thread, except where it says otherwise. */
public final class Authenticator {
    private static final Pattern BEARER =
            Pattern.compile("(?i:Bearer) +((?:stir_([0-9a-f]{12})_|stis_)[A-Za-z0-9_-]{43})");
    private static final int FREE_TRIES_AT_TERMINAL = 5;
    private static final int FREE_TRIES_OF_PERSON = 10;

    private final AccessFile file;
    private final InstantSource clock;
    private final SignOnSessions signOns = new SignOnSessions();
    private final AttemptLimiter terminals = new AttemptLimiter(FREE_TRIES_AT_TERMINAL);
    private final AttemptLimiter people = new AttemptLimiter(FREE_TRIES_OF_PERSON);
    private final Map<String, Instant> used = new TreeMap<>();
    private boolean open;
    private AccessList list;
    private String stamp;
    private boolean usedChanged;

    /**
     * Reads who may come in.
     *
     * @throws AccessFailure when the file cannot be read
     */
    public Authenticator(AccessFile file, InstantSource clock) {
        this.file = file;
        this.clock = clock;
        this.stamp = file.stamp();
        this.open = !file.closed();
        this.list = file.read();
        used.putAll(file.lastUses());
    }

    /** Whether the service is open: no token or code was ever given, so every caller of this machine may do everything. */
    public boolean open() {
        return open;
    }

    /** Authenticates the sender of a request by its header. */
    public AuthenticationResult check(@Nullable String authorization) {
        if (open()) return new AuthenticationResult.Known(Caller.LOCAL);
        if (authorization == null)
            return unknown("TOKEN_NEEDED", "this service asks who you are: send Authorization: Bearer and a token");
        Matcher bearer = BEARER.matcher(authorization);
        if (!bearer.matches())
            return unknown("TOKEN_UNKNOWN", "this is no token of this service; planner-service/care token makes one");
        return bearer.group(2) == null ? signedOn(bearer.group(1)) : token(bearer.group(1), bearer.group(2));
    }

    private static AuthenticationResult unknown(String code, String sentence) {
        return new AuthenticationResult.Unknown(code, sentence);
    }

    private AuthenticationResult token(String whole, String tokenId) {
        Optional<AccessList.Token> known = list.token(tokenId);
        String digest = Secrets.sha256(whole);
        if (known.isEmpty() || !Secrets.same(digest, known.get().sha256()))
            return unknown("TOKEN_UNKNOWN", "this is no token of this service; planner-service/care token makes one");
        if (known.get().revoked().isPresent())
            return unknown("TOKEN_REVOKED", "this token was taken back; ask for a new one");
        if (!known.get().expires().isAfter(clock.instant()))
            return unknown("TOKEN_EXPIRED", "this token ended at " + known.get().expires() + "; ask for a new one");
        use(tokenId);
        return new AuthenticationResult.Known(caller(known.get()));
    }

    private static Caller caller(AccessList.Token token) {
        return new Caller(
                token.tokenId(),
                Optional.of(token.role()),
                token.name(),
                token.salonId(),
                Optional.of(token.expires()),
                Optional.empty());
    }

    private void use(String tokenId) {
        Instant now = clock.instant();
        Instant before = used.getOrDefault(tokenId, Instant.EPOCH);
        if (Duration.between(before, now).toSeconds() < 60) return;
        used.put(tokenId, now);
        usedChanged = true;
    }

    private AuthenticationResult signedOn(String token) {
        return signOns.find(token)
                .filter(this::stillGood)
                .<AuthenticationResult>map(AuthenticationResult.Known::new)
                .orElseGet(() -> unknown("SIGN_ON_ENDED", "this sign-on has ended; sign on again"));
    }

    /** Whether a caller that was authenticated before still is. */
    public boolean stillGood(Caller caller) {
        if (caller.role().isEmpty()) return open();
        Instant now = clock.instant();
        if (caller.expires().filter(end -> !end.isAfter(now)).isPresent()) return false;
        if (caller.terminal().isEmpty()) return tokenGood(caller.key(), now);
        return signOns.lives(caller)
                && tokenGood(SignOnSessions.terminalToken(caller), now)
                && list.person(caller.actor())
                        .filter(person -> Optional.of(person.role()).equals(caller.role()))
                        .filter(person -> person.expires().isAfter(now))
                        .isPresent();
    }

    private boolean tokenGood(String tokenId, Instant now) {
        return list.token(tokenId)
                .filter(token -> token.revoked().isEmpty() && token.expires().isAfter(now))
                .isPresent();
    }

    /** Begins an attempt; its code is checked on another thread, because that is slow on purpose, unless it has to wait. */
    public CodeAttempt tryCode(Caller terminal, String personId, String code) {
        Instant now = clock.instant();
        Duration wait = terminals.lockedFor(terminal.key(), now);
        Optional<AccessList.Person> person = list.person(personId)
                .filter(known -> known.expires().isAfter(now))
                .filter(known -> known.salonId().isEmpty()
                        || terminal.salonId().isEmpty()
                        || known.salonId().equals(terminal.salonId()));
        if (person.isPresent() && people.lockedFor(personId, now).compareTo(wait) > 0)
            wait = people.lockedFor(personId, now);
        if (wait.isZero()) {
            terminals.count(terminal.key(), now);
            if (person.isPresent()) people.count(personId, now);
        }
        return new CodeAttempt(terminal, person, code, wait);
    }

    /** Ends an attempt whose code was checked. */
    public SignOnResult signOn(CodeAttempt tried, boolean right) {
        if (!tried.waiting().isZero()) return new SignOnResult.Locked(tried.waiting());
        if (!right || tried.person().isEmpty()) {
            Duration locked = terminals.lockedFor(tried.terminal().key(), clock.instant());
            String then = locked.isZero() ? "" : "; this terminal waits " + locked.toSeconds() + " seconds now";
            return new SignOnResult.Wrong("person or code is wrong" + then);
        }
        terminals.forget(tried.terminal().key());
        people.forget(tried.person().get().personId());
        return signOns.begin(tried.terminal(), tried.person().get(), clock.instant());
    }

    /** Ends a sign-on. */
    public void signOff(Caller caller) {
        signOns.end(caller);
    }

    /** Looks whether the list was changed. Reads a file: to be called on a thread that may wait. */
    public Optional<Reading> readAgain(String knownStamp) {
        String newest = file.stamp();
        return newest.equals(knownStamp)
                ? Optional.empty()
                : Optional.of(new Reading(newest, !file.closed(), file.read()));
    }

    /** What was read, and whether the service could be open by it. */
    public record Reading(String stamp, boolean open, AccessList list) {}

    /** The stamp of what is in force. */
    public String stamp() {
        return stamp;
    }

    /** Puts what was read in force. A service that is closed is never opened again. */
    public void renew(Reading reading) {
        if (reading.open()) return;
        open = false;
        stamp = reading.stamp();
        list = reading.list();
    }

    /** Last uses that were not written yet, once. */
    public Optional<Map<String, Instant>> unwrittenUses() {
        if (!usedChanged) return Optional.empty();
        usedChanged = false;
        return Optional.of(Map.copyOf(used));
    }

    /** Writes last uses. Writes a file: to be called on a thread that may wait. */
    public void write(Map<String, Instant> uses) {
        file.writeUses(uses);
    }
}
