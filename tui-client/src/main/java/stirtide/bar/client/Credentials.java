package stirtide.bar.client;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What a terminal brings along for a service that asks who it is.
 *
 * @param tokenFile file with the terminal's token on its first line, empty for an open service
 * @param trust certificates in PEM of the service or of who signed it, empty for those the machine trusts
 */
public record Credentials(Optional<Path> tokenFile, Optional<Path> trust) {
    /** Nothing: an open service on this machine. */
    public static final Credentials NONE = new Credentials(Optional.empty(), Optional.empty());

    private static final String CERTIFICATES = "certificates in PEM";

    /** What is wrong with the files, in a sentence. */
    public Optional<String> problem() {
        return unreadable("--token-file", tokenFile, "the token planner-service/care token printed")
                .or(() -> unreadable("--trust", trust, CERTIFICATES))
                .or(() -> trust.filter(path -> !HttpClients.holdsCertificates(path))
                        .map(Credentials::noCertificates));
    }

    private static String noCertificates(Path file) {
        return "--trust takes a file with " + CERTIFICATES + "; " + file + " holds none";
    }

    private static Optional<String> unreadable(String option, Optional<Path> file, String accepted) {
        return file.filter(path -> !Files.isReadable(path))
                .map(path -> option + " takes a file that can be read, with " + accepted + "; " + path + " is none");
    }

    /** The token; empty text when there is none. */
    String token() throws IOException {
        if (tokenFile.isEmpty()) return "";
        String first =
                Files.readString(tokenFile.get()).lines().findFirst().orElse("").trim();
        if (!first.matches("[A-Za-z0-9_-]{1,200}"))
            throw new IOException(tokenFile.get() + " holds no token on its first line");
        return first;
    }
}
