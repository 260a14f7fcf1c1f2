package stirtide.planner.http;

import java.nio.file.Path;
import java.util.Optional;
import stirtide.planner.access.Authenticator;

/**
 * How callers reach the service.
 *
 * @param authenticator who may come in
 * @param limits how much of it
 * @param encryption certificate and key, empty for none
 */
public record HttpSecurity(Authenticator authenticator, HttpLimits limits, Optional<Encryption> encryption) {
    /**
     * PEM files of the service.
     *
     * @param certificate the chain, the service's own first
     * @param key the private key, PKCS 8
     */
    public record Encryption(Path certificate, Path key) {}
}
