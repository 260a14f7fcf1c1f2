package stirtide.planner.http;

/**
 * Limits of the HTTP server. A request beyond a limit gets a response that says so.
 *
 * @param connections open connections, all together
 * @param connectionsPerPeer open connections of one address
 * @param listeners open lines, all together
 * @param listenersPerPeer open lines of one address
 * @param commandsPerMinute commands of one token or sign-on in any minute
 * @param quietSeconds seconds after which a connection on which no whole request comes is closed: nothing is asked, the
 *     headers dribble in, or the last answer is not read
 * @param bodyMillis milliseconds within which a body must be complete
 * @param answerMillis milliseconds after which a request gets the response that there is none yet; shorter than what
 *     an idle connection is granted
 * @param beatMillis milliseconds between two comments on a stream; a listener whose connection is full for three is dropped
 */
public record HttpLimits(
        int connections,
        int connectionsPerPeer,
        int listeners,
        int listenersPerPeer,
        int commandsPerMinute,
        int quietSeconds,
        int bodyMillis,
        int answerMillis,
        int beatMillis) {
    /** For a service that only its own machine reaches: all callers share one address. */
    public static final HttpLimits LOOPBACK = new HttpLimits(2000, 2000, 1000, 1000, 600, 12, 10_000, 25_000, 5_000);

    /** For a service on a network. */
    public static final HttpLimits NETWORK = new HttpLimits(2000, 64, 1000, 20, 600, 12, 10_000, 25_000, 5_000);
}
