package stirtide.planner.http;

/** A request that is refused on purpose. The message goes to the sender. */
public final class ApiException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final String READ_ONLY = "LOG_READ_ONLY";

    private final int status;
    private final String code;

    private ApiException(int status, String code, String sentence) {
        super(sentence, null, false, false);
        this.status = status;
        this.code = code;
    }

    /** For a reason that passes by itself. */
    public static ApiException notNow(String sentence) {
        return new ApiException(503, "NOT_NOW", sentence);
    }

    /** The time limit of a response has passed; the request may still be carried out. */
    static ApiException late() {
        return new ApiException(
                503,
                "ANSWER_LATE",
                "it takes too long to wait for; whether it was carried out is not known. A command sent again with the same"
                        + " commandId is carried out once");
    }

    /** Nothing is stored until an operator has looked. */
    public static ApiException readOnly() {
        return new ApiException(
                503,
                READ_ONLY,
                "nothing can be stored until the operator has looked at the log; what is shown is what can be read");
    }

    /** There is no space on the disk. */
    public static ApiException full(String sentence) {
        return new ApiException(507, "LOG_FULL", sentence);
    }

    /** It cannot be done as things are. */
    public static ApiException conflict(String code, String sentence) {
        return new ApiException(409, code, sentence);
    }

    /** Whether nothing can be stored at all until an operator has looked. */
    public boolean isReadOnly() {
        return code.equals(READ_ONLY);
    }

    ProblemDetail problem() {
        return ProblemDetail.of(status, code, String.valueOf(getMessage()));
    }
}
