package stirtide.bar.client;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Holds the bearer token that requests carry: the terminal's own, or that of the person who signed on there. */
public final class TokenHolder {
    private static final String AUTHORIZATION = "Authorization";
    private static final String BEARER = "Bearer ";

    private final Credentials credentials;
    private @Nullable String own;
    private @Nullable String ofPerson;
    private Consumer<String> whenRejected = why -> {};

    TokenHolder(Credentials credentials) {
        this.credentials = credentials;
    }

    /** Whether the terminal has a token of its own, without which no person can sign on. */
    public boolean hasOwn() {
        return credentials.tokenFile().isPresent();
    }

    /** Uses a person's token from now on; {@code rejected} gets a sentence when the service no longer accepts it. */
    public synchronized void actFor(String token, Consumer<String> rejected) {
        ofPerson = token;
        whenRejected = rejected;
    }

    /** Uses the terminal's own token again. */
    public synchronized void actAsTerminal() {
        ofPerson = null;
    }

    /** A request as the person who signed on, or as the terminal while no person has. */
    HttpRequest.Builder request(URI uri) throws IOException {
        return bearer(uri, currentToken());
    }

    /** A request as the terminal, whoever has signed on. */
    HttpRequest.Builder requestAsTerminal(URI uri) throws IOException {
        return bearer(uri, ownToken());
    }

    /** The service rejected the token of a request: if it was that of the person who signed on, the sign-on has ended. */
    void rejected(HttpRequest request, String sentence) {
        if (forgets(request)) whenRejected.accept(sentence);
    }

    // True once per sign-on: several requests may be under way when the service forgets it.
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

    private synchronized String currentToken() throws IOException {
        return ofPerson == null ? ownToken() : ofPerson;
    }

    private static HttpRequest.Builder bearer(URI uri, String token) {
        HttpRequest.Builder request = HttpRequest.newBuilder(uri);
        return token.isEmpty() ? request : request.header(AUTHORIZATION, BEARER + token);
    }
}
