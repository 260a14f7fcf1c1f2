package stirtide.events.day;

import java.time.Instant;
import java.util.Optional;

/**
 * When the tests before a service were done. That they were done says nothing about how they turned out, and nothing
 * about whether the service is safe: that is for a licensed professional to judge.
 *
 * @param strandTestAt when a strand test was done, if one is recorded
 * @param patchTestAt when a patch test was done, if one is recorded
 */
public record ClientTests(Optional<Instant> strandTestAt, Optional<Instant> patchTestAt) {
    /** Nothing is recorded. */
    public static final ClientTests NONE = new ClientTests(Optional.empty(), Optional.empty());

    /** What is tested. */
    public enum Kind {
        /** A strand of the client's hair with the mix. */
        STRAND,
        /** The client's skin. */
        PATCH
    }

    /** When a test of a kind was done, if one is recorded. */
    public Optional<Instant> at(Kind kind) {
        return kind == Kind.STRAND ? strandTestAt : patchTestAt;
    }

    /** The same with one more test recorded. */
    public ClientTests with(Kind kind, Instant at) {
        return kind == Kind.STRAND
                ? new ClientTests(Optional.of(at), patchTestAt)
                : new ClientTests(strandTestAt, Optional.of(at));
    }
}
