package stirtide.planner.access;

import java.time.Instant;
import java.util.Optional;

/**
 * The sender of a request.
 *
 * @param key id of the token or of the sign-on, empty text for the open service of one machine
 * @param role what the caller may do; empty for the open service, where every caller may do everything
 * @param actor who acts: person id, or name of the terminal or program
 * @param salonId the only salon the caller sees, empty for all of the service
 * @param expires when the token or the sign-on ends, empty for the open service
 * @param terminal name of the terminal a person signed on at, empty for all others
 */
public record Caller(
        String key,
        Optional<Role> role,
        String actor,
        Optional<String> salonId,
        Optional<Instant> expires,
        Optional<String> terminal) {
    /** A caller of a service without tokens, on its own machine, or of its administration socket. */
    public static final Caller LOCAL =
            new Caller("", Optional.empty(), "", Optional.empty(), Optional.empty(), Optional.empty());

    /** Whether the caller may know of a salon at all. */
    public boolean sees(String salon) {
        return salonId.isEmpty() || salonId.get().equals(salon);
    }

    /** Whether client references are disclosed to the caller. */
    public boolean seesClients() {
        return role.isEmpty() || role.get() != Role.SERVICE;
    }

    /** Whether the caller may act under a name. */
    public boolean actsAs(String name) {
        return role.isEmpty() || actor.equals(name);
    }
}
