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
 * The access files beside the log: {@code access.json}, written by commands and read by the service, and
 * {@code access-used.json}, written by the service only.
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

    private Path used() {
        return folder.resolve("access-used.json");
    }

    /** A token as it is shown once, and what is kept of it. */
    public record Made(String token, AccessList.Token kept) {}

    /**
     * The tokens and codes that were given; none when there is no file.
     *
     * @throws AccessFailure when the file cannot be read as one
     */
    public AccessList read() {
        return read(list(), AccessList.class, AccessList.EMPTY);
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
            return ContractJson.read(Files.readString(file), type);
        } catch (NoSuchFileException absent) {
            return otherwise;
        } catch (IOException | IllegalArgumentException unreadable) {
            throw new AccessFailure(
                    file + " cannot be read: " + unreadable.getMessage()
                            + "; no request is accepted until it is restored or removed",
                    unreadable);
        }
    }

    void writeUses(Map<String, Instant> uses) {
        try {
            OwnerOnlyFile.write(used(), ContractJson.write(new Uses(uses)));
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
            Files.createDirectories(folder);
            try (FileChannel lock = FileChannel.open(
                            folder.resolve("access.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                    var held = lock.lock()) {
                if (held.isValid()) OwnerOnlyFile.write(list(), ContractJson.write(change.apply(read())));
            }
        } catch (IOException unwritable) {
            throw new AccessFailure(list() + " cannot be written: " + unwritable.getMessage(), unwritable);
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
