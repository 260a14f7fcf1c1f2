package stirtide.planner.access;

/** Result of looking at the credentials of a request. */
public sealed interface AuthenticationResult {
    /** The caller is known. */
    record Known(Caller caller) implements AuthenticationResult {}

    /** The caller is not known; code and sentence say why. */
    record Unknown(String code, String sentence) implements AuthenticationResult {}
}
