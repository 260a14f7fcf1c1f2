package stirtide.events.json;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;

/**
 * Reads events of ours from their stored bytes in one pass. A log of years is read this way: no tree is built, and the
 * data become their record at once. Whatever is not as the newest version writes it takes the long way through
 * {@link CloudEvent}, which gives the same answer and the reasons of a refusal.
 */
public final class EventReader {
    private static final String SALONS = "/salons/";

    /** The kind is known from the envelope, so the data need not name it. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NONE)
    private interface Untyped {}

    /** Without the search for doubled names: what is in the log was written by us and is held by a digest. */
    private static final JsonFactory JSON =
            JsonFactory.builder().recyclerPool(ContractJson.freshBuffers()).build();

    private static final Map<String, Class<? extends DayEvent>> RECORDS = EventTypes.all().stream()
            .collect(Collectors.toUnmodifiableMap(EventTypes.EventType::wireType, EventTypes.EventType::record));

    /** By type, each made when the first event of it is read: to make one takes as long as to read a hundred events. */
    private static final Map<String, ObjectReader> DATA = new ConcurrentHashMap<>();

    private static final ObjectMapper MAPPER = ContractJson.mapper()
            .copy()
            .addMixIn(DayEvent.class, Untyped.class)
            .registerModule(new SimpleModule("instants").addDeserializer(Instant.class, new InstantText()))
            .disable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    private @Nullable String specVersion;
    private @Nullable String id;
    private @Nullable String source;
    private @Nullable String subject;
    private @Nullable String type;
    private @Nullable Instant time;
    private @Nullable String actor;
    private @Nullable String actorRole;
    private @Nullable DayEvent event;
    private String commandId = "";
    private long revision;

    private EventReader() {}

    /**
     * The event in stored bytes, brought to its newest version.
     *
     * @throws UnreadableEvent when this release does not know the type or version, or the data do not fit it
     */
    public static StoredEvent read(byte[] json) {
        return fast(json)
                .orElseGet(() -> CloudEvent.read(new String(json, StandardCharsets.UTF_8))
                        .toStored());
    }

    private static Optional<StoredEvent> fast(byte[] json) {
        try (JsonParser parser = JSON.createParser(json)) {
            return new EventReader().take(parser);
        } catch (IOException | DateTimeException | IllegalArgumentException notAsWritten) {
            return Optional.empty();
        }
    }

    /**
     * The id of the event in stored bytes, empty when they are no event. It stands in front, so little is read.
     */
    public static Optional<String> id(byte[] json) {
        try (JsonParser parser = JSON.createParser(json)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) return Optional.empty();
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                boolean wanted = parser.currentName().equals("id");
                parser.nextToken();
                if (wanted) return Optional.ofNullable(parser.getValueAsString());
                parser.skipChildren();
            }
            return Optional.empty();
        } catch (IOException noEvent) {
            return Optional.empty();
        }
    }

    private Optional<StoredEvent> take(JsonParser parser) throws IOException {
        if (parser.nextToken() != JsonToken.START_OBJECT) return Optional.empty();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            parser.nextToken();
            if (!name.equals("data")) attribute(name, parser);
            else if (!data(parser)) return Optional.empty();
        }
        return stored();
    }

    private void attribute(String name, JsonParser parser) throws IOException {
        String text = parser.getText();
        switch (name) {
            case "specversion" -> specVersion = text;
            case "id" -> id = text;
            case "source" -> source = text;
            case "subject" -> subject = text;
            case "type" -> type = text;
            case "time" -> time = InstantText.parse(text);
            case "actor" -> actor = text;
            case "actorrole" -> actorRole = text;
            case "commandid" -> commandId = text;
            case "sequence" -> revision = Long.parseLong(text);
            default -> parser.skipChildren();
        }
    }

    private boolean data(JsonParser parser) throws IOException {
        if (type == null || !RECORDS.containsKey(type)) return false;
        ObjectReader reader = DATA.computeIfAbsent(type, known -> MAPPER.readerFor(RECORDS.get(known)));
        if (parser.currentToken() != JsonToken.START_OBJECT) return false;
        event = reader.readValue(parser);
        return true;
    }

    private Optional<StoredEvent> stored() {
        if (!"1.0".equals(specVersion)) return Optional.empty();
        if (id == null || source == null || subject == null || time == null || actor == null || event == null)
            return Optional.empty();
        if (!source.startsWith(SALONS)) return Optional.empty();
        String day = Objects.requireNonNull(source).substring(SALONS.length()) + "/" + subject;
        return Optional.of(
                new StoredEvent(id, day, revision, time, actor, commandId, event, Optional.ofNullable(actorRole)));
    }
}
