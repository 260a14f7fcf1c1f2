package stirtide.bar.link;

import java.net.URI;
import java.net.http.HttpClient;
import java.security.GeneralSecurityException;
import java.time.Duration;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManager;

/** Makes HTTP clients. */
final class Clients {
    private static final TrustManager[] NOBODY = {};

    private Clients() {}

    /** A client for one server; {@code patience} is how long connecting may take. */
    static HttpClient of(URI server, Duration patience) {
        HttpClient.Builder builder =
                HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).connectTimeout(patience);
        if ("http".equals(server.getScheme())) withoutCertificates(builder);
        return builder.build();
    }

    // Reading the certificates of the machine takes a fifth of a second, and an unencrypted line has no use for them.
    // Nobody is trusted this way, so nothing is weakened: an encrypted server could not be reached at all.
    private static void withoutCertificates(HttpClient.Builder builder) {
        try {
            SSLContext nobody = SSLContext.getInstance("TLS");
            nobody.init(null, NOBODY, null);
            builder.sslContext(nobody);
        } catch (GeneralSecurityException noTlsHere) {
            // The client makes its own, only later.
        }
    }
}
