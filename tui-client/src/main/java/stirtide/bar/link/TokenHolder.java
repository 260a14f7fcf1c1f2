package stirtide.bar.link;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Whose token requests carry: the terminal's own, or that of the person who signed on there. */
final class TokenHolder {
    private static final String AUTHORIZATION = "Authorization";
    private static final String BEARER = "Bearer ";

    private final Credentials credentials;
    private @Nullable String own;
    private @Nullable String ofPerson;
    private Consumer<String> ended = why -> {};

    TokenHolder(Credentials credentials) {
        this.credentials = credentials;
    }

    /** Whether the terminal brings a token of its own, without which nobody can sign on. */
    boolean hasOwn() {
        return credentials.tokenFile().isPresent();
    }

    /** Carries a person's token from now on; {@code ended} gets a sentence when the service no longer takes it. */
    synchronized void actFor(String token, Consumer<String> toldWhenEnded) {
        ofPerson = token;
        ended = toldWhenEnded;
    }

    /** Carries the terminal's own token again. */
    synchronized void actForNobody() {
        ofPerson = null;
    }

    /** A request as who works here. */
    HttpRequest.Builder request(URI uri) throws IOException {
        return bearer(uri, carried());
    }

    /** A request as the terminal, whoever works here. */
    HttpRequest.Builder asTerminal(URI uri) throws IOException {
        return bearer(uri, ownToken());
    }

    /** The service did not know who sent a request: if that was the person who signed on, the sign-on is over. */
    void unknown(HttpRequest request, String sentence) {
        if (forgets(request)) ended.accept(sentence);
    }

    // True once a sign-on: several requests may be under way when the service forgets it.
    private synchronized boolean forgets(HttpRequest request) {
        boolean person = ofPerson != null
                && request.headers()
                        .firstValue(AUTHORIZATION)
                        .filter((BEARER + ofPerson)::equals)
                        .isPresent();
        if (person) ofPerson = null;
        return person;
    }

    private synchronized String ownToken() throws IOException {
        String known = own;
        if (known == null) {
            known = credentials.token();
            own = known;
        }
        return known;
    }

    private synchronized String carried() throws IOException {
        return ofPerson == null ? ownToken() : ofPerson;
    }

    private static HttpRequest.Builder bearer(URI uri, String token) {
        HttpRequest.Builder request = HttpRequest.newBuilder(uri);
        return token.isEmpty() ? request : request.header(AUTHORIZATION, BEARER + token);
    }
}
