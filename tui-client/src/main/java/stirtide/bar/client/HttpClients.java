package stirtide.bar.client;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.time.Duration;
import java.util.Collection;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManager;
import javax.net.ssl.TrustManagerFactory;

/** Creates HTTP clients. */
final class HttpClients {
    private static final TrustManager[] NO_TRUST = {};

    private HttpClients() {}

    /**
     * A client for one server.
     *
     * @param timeout how long connecting may take
     * @param trust certificates in PEM to trust instead of the machine's
     */
    static HttpClient of(URI server, Duration timeout, Optional<Path> trust) {
        HttpClient.Builder builder =
                HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).connectTimeout(timeout);
        if ("http".equals(server.getScheme())) withoutCertificates(builder);
        else trust.ifPresent(file -> builder.sslContext(trusting(file)));
        return builder.build();
    }

    /** Whether a file that can be read holds certificates in PEM, one at least. */
    static boolean holdsCertificates(Path file) {
        try {
            return !certificates(file).isEmpty();
        } catch (IOException | GeneralSecurityException none) {
            return false;
        }
    }

    private static Collection<? extends Certificate> certificates(Path file)
            throws IOException, GeneralSecurityException {
        try (InputStream pem = Files.newInputStream(file)) {
            return CertificateFactory.getInstance("X.509").generateCertificates(pem);
        }
    }

    private static SSLContext trusting(Path file) {
        try {
            KeyStore known = KeyStore.getInstance(KeyStore.getDefaultType());
            known.load(null, null);
            int number = 0;
            for (Certificate certificate : certificates(file))
                known.setCertificateEntry("trusted-" + number++, certificate);
            TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
            trust.init(known);
            SSLContext context = SSLContext.getInstance("TLS");
            context.init(null, trust.getTrustManagers(), null);
            return context;
        } catch (IOException | GeneralSecurityException unusable) {
            throw new IllegalArgumentException(
                    "--trust " + file + " holds no certificates in PEM: " + unusable.getMessage(), unusable);
        }
    }

    // Reading the certificates of the machine takes a fifth of a second, and plain HTTP does not need them. No
    // certificate is
    // trusted this way, so nothing is weakened: a TLS server could not be reached at all.
    private static void withoutCertificates(HttpClient.Builder builder) {
        try {
            SSLContext context = SSLContext.getInstance("TLS");
            context.init(null, NO_TRUST, null);
            builder.sslContext(context);
        } catch (GeneralSecurityException noTlsHere) {
            // The client creates a context of its own when it needs one.
        }
    }
}
