package stirtide.planner.access;

import java.time.Duration;

/** Result of an attempt to sign on at a terminal. */
public sealed interface SignOnResult {
    /** Signed on. The token is good until {@link Caller#expires}. */
    record SignedOn(String token, Caller caller) implements SignOnResult {}

    /** Person or code is wrong. */
    record Wrong(String sentence) implements SignOnResult {}

    /** Too many wrong codes; no code is checked for that long. */
    record Locked(Duration waiting) implements SignOnResult {}
}
