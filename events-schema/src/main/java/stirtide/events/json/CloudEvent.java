package stirtide.events.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;

/**
 * The envelope of CloudEvents 1.0 in its structured JSON form: what the log keeps and the wire carries. The source is
 * the salon, the subject the day, the extension {@code sequence} the revision in ten digits.
 *
 * @param id unique together with the source
 * @param source what the event comes from, a URI reference
 * @param type kind and version
 * @param subject what within the source it is about
 * @param time when it happened
 * @param dataContentType media type of the data
 * @param dataSchema name of the schema of the data
 * @param extensions further attributes by name
 * @param data what happened
 */
public record CloudEvent(
        String id,
        String source,
        String type,
        Optional<String> subject,
        Optional<Instant> time,
        Optional<String> dataContentType,
        Optional<String> dataSchema,
        SortedMap<String, JsonNode> extensions,
        JsonNode data) {

    private static final String SPEC_VERSION = "1.0";
    private static final String SALONS = "/salons/";
    private static final Pattern OWN_TYPE = Pattern.compile("stirtide\\.([A-Za-z]+)\\.v([1-9][0-9]{0,3})");
    private static final DateTimeFormatter MILLIS = DateTimeFormatter.ofPattern(
                    "uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);
    private static final List<String> ATTRIBUTES =
            List.of("specversion", "id", "source", "type", "subject", "time", "datacontenttype", "dataschema", "data");

    public CloudEvent {
        extensions = Collections.unmodifiableSortedMap(new TreeMap<>(extensions));
    }

    /** The envelope of an event of ours. */
    public static CloudEvent of(StoredEvent stored) {
        int slash = stored.day().lastIndexOf('/');
        if (slash < 1) throw new IllegalArgumentException("a day is salon id, slash, date: " + stored.day());
        var type = EventTypes.of(stored.event());
        var data = (ObjectNode) ContractJson.mapper().valueToTree(stored.event());
        data.remove("type");
        var extensions = new TreeMap<String, JsonNode>();
        extensions.put("sequence", TextNode.valueOf(String.format(Locale.ROOT, "%010d", stored.revision())));
        extensions.put("actor", TextNode.valueOf(stored.actor()));
        stored.actorRole().ifPresent(role -> extensions.put("actorrole", TextNode.valueOf(role)));
        if (!stored.commandId().isEmpty()) extensions.put("commandid", TextNode.valueOf(stored.commandId()));
        return new CloudEvent(
                stored.eventId(),
                SALONS + stored.day().substring(0, slash),
                type.wireType(),
                Optional.of(stored.day().substring(slash + 1)),
                Optional.of(stored.time()),
                Optional.of("application/json"),
                Optional.of(type.dataSchema()),
                extensions,
                data);
    }

    /**
     * The event of ours in this envelope, brought to its newest version.
     *
     * @throws UnreadableEvent when this release does not know the type or version, or the data do not fit it
     */
    public StoredEvent toStored() {
        return toStored(Upcasters.IN_FORCE);
    }

    StoredEvent toStored(Upcasters upcasters) {
        if (!source.startsWith(SALONS)) throw unreadable("its source is " + source + ", not a salon");
        return new StoredEvent(
                id,
                source.substring(SALONS.length()) + "/" + subject.orElseThrow(() -> unreadable("it names no day")),
                revision(),
                time.orElseThrow(() -> unreadable("it has no time")),
                extension("actor").orElseThrow(() -> unreadable("it has no actor")),
                extension("commandid").orElse(""),
                event(upcasters),
                extension("actorrole"));
    }

    private long revision() {
        try {
            return Long.parseLong(extension("sequence").orElse(""));
        } catch (NumberFormatException noNumber) {
            throw unreadable("its sequence is no number", noNumber);
        }
    }

    private DayEvent event(Upcasters upcasters) {
        var match = OWN_TYPE.matcher(type);
        if (!match.matches()) throw unreadable("its type is unknown");
        var known = EventTypes.named(match.group(1)).orElseThrow(() -> unreadable("its type is unknown"));
        if (!(data instanceof ObjectNode written)) throw unreadable("its data are no object");
        var current = upcasters
                .bring(known.name(), Integer.parseInt(match.group(2)), known.version(), written.deepCopy())
                .orElseThrow(() -> unreadable("its version is unknown, the newest known is " + known.version()));
        try {
            return ContractJson.mapper().treeToValue(current.put("type", known.name()), DayEvent.class);
        } catch (JsonProcessingException unfit) {
            throw unreadable("its data do not fit: " + unfit.getOriginalMessage(), unfit);
        }
    }

    private Optional<String> extension(String name) {
        return Optional.ofNullable(extensions.get(name)).map(JsonNode::asText);
    }

    /** Structured JSON on one line. */
    public String write() {
        var json = ContractJson.mapper().createObjectNode();
        json.put("specversion", SPEC_VERSION);
        json.put("id", id);
        json.put("source", source);
        json.put("type", type);
        subject.ifPresent(text -> json.put("subject", text));
        time.ifPresent(instant -> json.put("time", MILLIS.format(instant)));
        dataContentType.ifPresent(text -> json.put("datacontenttype", text));
        dataSchema.ifPresent(text -> json.put("dataschema", text));
        extensions.forEach(json::set);
        json.set("data", data);
        return json.toString();
    }

    /**
     * Reads structured JSON, of this program or another.
     *
     * @throws UnreadableEvent when the text is not a CloudEvent of version 1.0
     */
    public static CloudEvent read(String text) {
        try {
            if (!(ContractJson.mapper().readTree(text) instanceof ObjectNode json))
                throw new UnreadableEvent("not a CloudEvent: no JSON object");
            if (!SPEC_VERSION.equals(text(json, "specversion")))
                throw new UnreadableEvent("not a CloudEvent of version " + SPEC_VERSION);
            return read(json);
        } catch (JsonProcessingException | DateTimeException noEvent) {
            throw new UnreadableEvent("not a CloudEvent: " + noEvent.getMessage(), noEvent);
        }
    }

    private static CloudEvent read(ObjectNode json) {
        var extensions = new TreeMap<String, JsonNode>();
        json.properties().forEach(field -> {
            if (!ATTRIBUTES.contains(field.getKey())) extensions.put(field.getKey(), field.getValue());
        });
        return new CloudEvent(
                required(json, "id"),
                required(json, "source"),
                required(json, "type"),
                Optional.ofNullable(text(json, "subject")),
                Optional.ofNullable(text(json, "time"))
                        .map(time -> OffsetDateTime.parse(time).toInstant()),
                Optional.ofNullable(text(json, "datacontenttype")),
                Optional.ofNullable(text(json, "dataschema")),
                extensions,
                json.path("data"));
    }

    private static String required(ObjectNode json, String name) {
        var value = text(json, name);
        if (value == null || value.isEmpty())
            throw new UnreadableEvent("not a CloudEvent: \"" + name + "\" is missing");
        return value;
    }

    private static @Nullable String text(ObjectNode json, String name) {
        var value = json.get(name);
        return value == null || value.isNull() ? null : value.asText();
    }

    private UnreadableEvent unreadable(String why) {
        return new UnreadableEvent(place() + why);
    }

    private UnreadableEvent unreadable(String why, Throwable cause) {
        return new UnreadableEvent(place() + why, cause);
    }

    private String place() {
        return "event " + id + " of type " + type + " at sequence "
                + extension("sequence").orElse("none") + " cannot be read: ";
    }
}
