package stirtide.bar.link;

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

/** Makes HTTP clients. */
final class HttpClients {
    private static final TrustManager[] NOBODY = {};

    private HttpClients() {}

    /** A client for one server; {@code patience} is how long connecting may take. */
    static HttpClient of(URI server, Duration patience, Optional<Path> trust) {
        HttpClient.Builder builder =
                HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).connectTimeout(patience);
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
