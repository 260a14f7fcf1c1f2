package stirtide.planner.privacy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import stirtide.events.command.CommandRequest;
import stirtide.events.json.ContractJson;
import stirtide.planner.access.CheckedFile;

/**
 * The keys of all clients, in {@code clients.keys} beside the log, and the ids of those who were erased, in {@code
 * clients.erased}. Confined to one thread, except {@link #write}.
 */
public final class ClientKeys {
    /** What is shown of a client whose key is gone. */
    public static final String ERASED = "erased";

    private static final Pattern SEALED = Pattern.compile("sealed:(c[0-9]{6,9}):([A-Za-z0-9_-]{1,400})");
    static final Pattern ID = Pattern.compile("c[0-9]{6,9}");
    private static final int LONGEST = 64;
    private static final int MOST = 100_000;

    private final Path file;
    private final Path erasedFile;
    private final Map<String, ClientKey> byId = new TreeMap<>();
    private final Map<String, ClientKey> byLookup = new TreeMap<>();
    private final Set<String> erased = new TreeSet<>();
    private String lookupKey = ReferenceCipher.freshKey();
    private int newest;

    /**
     * Reads the keys in a folder. A key of an erased client, brought back with an old copy, is not taken.
     *
     * @throws IOException when a file is there and cannot be read as one
     */
    public ClientKeys(Path folder) throws IOException {
        file = folder.resolve("clients.keys");
        erasedFile = folder.resolve("clients.erased");
        ErasedClients list = ErasedClients.read(erasedFile);
        erased.addAll(list.ids());
        try {
            CheckedFile.Content found = CheckedFile.read(file);
            Content content = ContractJson.read(found.text(), Content.class);
            list.requireWhole(erasedFile, found.checked(), content.erased().orElse(0));
            read(content);
        } catch (NoSuchFileException | java.nio.file.NotDirectoryException none) {
            newest = 0;
        } catch (IllegalArgumentException broken) {
            throw new IOException(file + " is no file of keys: " + broken.getMessage(), broken);
        }
        for (String id : erased) newest = Math.max(newest, number(id));
    }

    /**
     * The file.
     *
     * @param lookupKey key by which references are found
     * @param newest number given last
     * @param clients all clients
     * @param erased how many clients were erased when it was written; files of earlier releases do not tell
     */
    record Content(String lookupKey, int newest, List<ClientKey> clients, Optional<Integer> erased) {}

    private void read(Content content) {
        lookupKey = content.lookupKey();
        newest = content.newest();
        for (ClientKey client : content.clients())
            if (!ID.matcher(client.clientId()).matches())
                throw new IllegalArgumentException(client.clientId() + " is no id of a client");
        for (ClientKey client : content.clients()) if (!erased.contains(client.clientId())) keep(client);
    }

    private void keep(ClientKey client) {
        byId.put(client.clientId(), client);
        byLookup.put(client.lookup(), client);
    }

    private static int number(String clientId) {
        return Integer.parseInt(clientId.substring(1));
    }

    /** A reference that is not sealed, and so not stored. */
    public static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final String code;

        private Refused(String code, String sentence) {
            super(sentence);
            this.code = code;
        }

        /** Code of the problem document. */
        public String code() {
            return code;
        }

        /** Says what would be accepted, and nothing of the reference. */
        public String sentence() {
            return String.valueOf(getMessage());
        }
    }

    /** A request with every reference sealed, and the keys it needs that are not kept yet. */
    public record Sealed(CommandRequest request, List<ClientKey> fresh) {}

    /**
     * Seals every client reference of a request, wherever it stands. The keys of new clients are kept by {@link #keep}
     * only, which must follow before anything else is sealed.
     *
     * @throws Refused when a reference is longer than any day accepts or is no text, or when no more clients are kept
     */
    public Sealed seal(CommandRequest request) {
        Map<String, ClientKey> fresh = new LinkedHashMap<>();
        CommandRequest sealed = RequestReferences.replaced(request, reference -> seal(reference, fresh));
        return new Sealed(sealed, List.copyOf(fresh.values()));
    }

    /** Seals the references of clients who are known; others stay as they are, so that it equals no stored request. */
    public CommandRequest sealKnown(CommandRequest request) {
        return RequestReferences.replaced(
                request,
                reference -> byLookup.containsKey(ReferenceCipher.hmac(lookupKey, reference))
                        ? seal(reference, new LinkedHashMap<>())
                        : reference);
    }

    /** Keeps the keys of new clients; {@link #snapshot} and {@link #write} carry them to the disk. */
    public void keep(Collection<ClientKey> fresh) {
        for (ClientKey client : fresh) {
            keep(client);
            newest = Math.max(newest, number(client.clientId()));
        }
    }

    /** No id up to this one is given from now on. Others than ids are let pass. */
    public void giveAbove(String clientId) {
        if (ID.matcher(clientId).matches()) newest = Math.max(newest, number(clientId));
    }

    /** A reference sealed with its client's key, kept at once; a blank one stays as it is. */
    String seal(String reference) {
        Map<String, ClientKey> fresh = new LinkedHashMap<>();
        String sealed = seal(reference, fresh);
        keep(fresh.values());
        return sealed;
    }

    private String seal(String reference, Map<String, ClientKey> fresh) {
        if (reference.isBlank()) return reference;
        if (reference.length() > LONGEST)
            throw new Refused(
                    "CLIENT_REFERENCE_LONG", "A client reference is initials or a number, 64 characters at most.");
        // Half a character cannot be written, and what is written instead would be another client's.
        if (!StandardCharsets.UTF_8.newEncoder().canEncode(reference))
            throw new Refused("CLIENT_REFERENCE_NO_TEXT", "A client reference is text; this one has half a character.");
        String lookup = ReferenceCipher.hmac(lookupKey, reference);
        ClientKey client = byLookup.get(lookup);
        if (client == null) client = fresh.get(lookup);
        if (client == null) {
            if (byId.size() + fresh.size() >= MOST)
                throw new Refused(
                        "CLIENTS_FULL",
                        "No more than " + MOST + " clients are kept. Accepted: a booking of a known client, or one"
                                + " without a reference; erasing clients makes room.");
            int number = newest + fresh.size() + 1;
            client = new ClientKey(String.format(Locale.ROOT, "c%06d", number), ReferenceCipher.freshKey(), lookup);
            fresh.put(lookup, client);
        }
        return "sealed:" + client.clientId() + ":" + ReferenceCipher.seal(client, reference);
    }

    /** A text with every sealed reference opened; an erased client reads as {@link #ERASED}. */
    public String shown(String text) {
        if (!text.contains("sealed:c")) return text;
        return SEALED.matcher(text)
                .replaceAll(found ->
                        java.util.regex.Matcher.quoteReplacement(inJson(Optional.ofNullable(byId.get(found.group(1)))
                                .flatMap(client -> ReferenceCipher.open(client, found.group(2)))
                                .orElse(ERASED))));
    }

    private static String inJson(String text) {
        String quoted = ContractJson.write(text);
        return quoted.substring(1, quoted.length() - 1);
    }

    /** The id of a client by reference; empty when the reference is not known. */
    public Optional<String> find(String reference) {
        return Optional.ofNullable(byLookup.get(ReferenceCipher.hmac(lookupKey, reference)))
                .map(ClientKey::clientId);
    }

    /** Destroys the key of a client in memory; {@link #snapshot} and {@link #write} carry it to the disk. */
    public void forget(String clientId) {
        ClientKey gone = byId.remove(clientId);
        if (gone != null) byLookup.remove(gone.lookup());
        erased.add(clientId);
        newest = Math.max(newest, number(clientId));
    }

    /** Whether a client has a key or was erased; of others the keys were lost. */
    public boolean knows(String clientId) {
        return byId.containsKey(clientId) || erased.contains(clientId);
    }

    /** Ids of all who were erased, sorted. */
    public List<String> erased() {
        return List.copyOf(erased);
    }

    /** What is to be written. */
    public record Snapshot(String keys, String erased) {}

    /** What is to be written now. */
    public Snapshot snapshot() {
        Content content = new Content(lookupKey, newest, new ArrayList<>(byId.values()), Optional.of(erased.size()));
        return new Snapshot(ContractJson.write(content), String.join("\n", erased));
    }

    /** Writes it; what stood in the file before is overwritten. May be called on a thread that waits. */
    public void write(Snapshot snapshot) throws IOException {
        write(file, erasedFile, snapshot);
    }

    /** Writes it into another folder. */
    public void writeTo(Path folder, Snapshot snapshot) throws IOException {
        write(folder.resolve("clients.keys"), folder.resolve("clients.erased"), snapshot);
    }

    private static void write(Path file, Path erasedFile, Snapshot snapshot) throws IOException {
        byte[] known = snapshot.erased().getBytes(StandardCharsets.UTF_8);
        if (known.length > 0) CheckedFile.write(erasedFile, snapshot.erased());
        CheckedFile.writeOver(file, snapshot.keys());
    }
}
