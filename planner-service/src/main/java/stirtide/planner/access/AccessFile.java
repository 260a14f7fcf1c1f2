package stirtide.planner.access;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import stirtide.events.json.ContractJson;

/**
 * The access files beside the log: {@code access.json}, written by commands and read by the service, {@code
 * access-used.json}, when each token was used, and {@code access.lock}. Where any of them is, the service is closed.
 */
public final class AccessFile {
    private final Path folder;

    /** The files in a data folder; they need not be there. */
    public AccessFile(Path folder) {
        this.folder = folder;
    }

    private Path list() {
        return folder.resolve("access.json");
    }

    private Path lock() {
        return folder.resolve("access.lock");
    }

    private Path used() {
        return folder.resolve("access-used.json");
    }

    /** A token as it is shown once, and what is kept of it. */
    public record Made(String token, AccessList.Token kept) {}

    /**
     * Whether a token or code was ever given here, or the log came from elsewhere: nobody is let in without one then,
     * whatever became of the list.
     */
    public boolean closed() {
        return Files.exists(list()) || Files.exists(lock()) || Files.exists(used());
    }

    /** Closes the service until a token or code is given. */
    public void close() throws IOException {
        Files.createDirectories(folder);
        if (!Files.exists(used())) CheckedFile.write(used(), ContractJson.write(new Uses(Map.of())));
        if (!Files.exists(lock())) Files.createFile(lock());
    }

    /**
     * The tokens and codes that were given; none where none was ever given.
     *
     * @throws AccessFailure when the file cannot be read as one, or is missing or empty although the service is closed
     */
    public AccessList read() {
        if (closed() && isLost())
            throw new AccessFailure(list()
                    + " is missing or empty, so it is not known who may come in; the service stays closed. Restore"
                    + " the file, or give a token anew: planner-service/care token " + folder
                    + " add --role manager --name PERSON");
        return read(list(), AccessList.class, AccessList.EMPTY);
    }

    private boolean isLost() {
        try {
            return !Files.exists(list()) || Files.size(list()) == 0;
        } catch (IOException gone) {
            return true;
        }
    }

    /** When each token was last used, to about a minute. */
    public SortedMap<String, Instant> lastUses() {
        return new TreeMap<>(read(used(), Uses.class, new Uses(Map.of())).uses());
    }

    record Uses(Map<String, Instant> uses) {}

    private static <T> T read(Path file, Class<T> type, T otherwise) {
        // What is wrong with the folder itself, the log says better.
        if (!Files.exists(file)) return otherwise;
        try {
            return ContractJson.read(CheckedFile.read(file).text(), type);
        } catch (NoSuchFileException absent) {
            return otherwise;
        } catch (IOException | IllegalArgumentException unreadable) {
            throw new AccessFailure(
                    file + " cannot be read: " + unreadable.getMessage()
                            + "; no request is accepted until it is restored",
                    unreadable);
        }
    }

    void writeUses(Map<String, Instant> uses) {
        try {
            CheckedFile.write(used(), ContractJson.write(new Uses(uses)));
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    /** Makes a token that ends after a while. */
    public Made make(String name, Role role, Optional<String> salonId, Instant now, Duration lasts) {
        String tokenId = Secrets.hex(12);
        String token = "stir_" + tokenId + "_" + Secrets.token();
        AccessList.Token kept = new AccessList.Token(
                tokenId, name, role, salonId, Secrets.sha256(token), now, now.plus(lasts), Optional.empty());
        change(list -> list.with(kept));
        return new Made(token, kept);
    }

    /** Takes a token back; whether there was one. */
    public boolean revoke(String tokenId, Instant now) {
        Optional<AccessList.Token> known = read().token(tokenId);
        known.ifPresent(token -> change(
                list -> list.with(token.withRevoked(Optional.of(token.revoked().orElse(now))))));
        return known.isPresent();
    }

    /** Gives a person a new code, which is shown once. */
    public String giveCode(String personId, Role role, Optional<String> salonId, Instant now, Duration lasts) {
        String code = Secrets.code();
        String salt = Secrets.hex(32);
        String digest = Secrets.pbkdf2(code, salt, Secrets.ROUNDS);
        change(list -> list.with(
                new AccessList.Person(personId, role, salonId, salt, digest, Secrets.ROUNDS, now.plus(lasts))));
        return code;
    }

    /** Takes a person's code away; whether there was one. */
    public boolean takeCode(String personId) {
        boolean known = read().person(personId).isPresent();
        if (known) change(list -> list.without(personId));
        return known;
    }

    /** One change after the other, also between two commands. */
    private void change(UnaryOperator<AccessList> change) {
        try {
            close();
            try (FileChannel lock = FileChannel.open(lock(), StandardOpenOption.WRITE);
                    var held = lock.lock()) {
                AccessList before = isLost() ? AccessList.EMPTY : read();
                if (held.isValid()) CheckedFile.write(list(), ContractJson.write(change.apply(before)));
            }
        } catch (IOException unwritable) {
            throw AccessFailure.unwritable(list() + " cannot be written: " + unwritable.getMessage(), unwritable);
        }
    }

    /** Something that differs when the list was changed. */
    String stamp() {
        try {
            return Files.getLastModifiedTime(list()) + " " + Files.size(list()) + " "
                    + Secrets.sha256(Files.readString(list(), StandardCharsets.UTF_8));
        } catch (IOException absent) {
            return "";
        }
    }
}
