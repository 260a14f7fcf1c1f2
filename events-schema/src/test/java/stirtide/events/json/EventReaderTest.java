package stirtide.events.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;

/** The quick way and the long way through the envelope are one way. */
class EventReaderTest {
    private static final String SAMPLE = "/samples/%s.v%d.json";

    static Stream<EventTypes.EventType> everyType() {
        return EventTypes.all().stream();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static StoredEvent sample(EventTypes.EventType type) throws IOException {
        try (var file = EventReaderTest.class.getResourceAsStream(SAMPLE.formatted(type.name(), type.version()))) {
            var json = (ObjectNode) ContractJson.mapper().readTree(file);
            var data = json.has("specversion") ? (ObjectNode) json.get("data") : json;
            data.put("type", type.name());
            var event = ContractJson.mapper().treeToValue(data, DayEvent.class);
            return new StoredEvent(
                    "id-1", "quay/2027-05-14", 7, Instant.parse("2027-05-14T09:00:00.120Z"), "bo", "c-1", event);
        }
    }

    @ParameterizedTest
    @MethodSource("everyType")
    void every_sample_reads_the_same_both_ways(EventTypes.EventType type) throws IOException {
        same(sample(type));
        same(sample(type).by(Optional.of("colorist")));
    }

    private static void same(StoredEvent event) {
        var text = CloudEvent.of(event).write();
        assertThat(EventReader.read(bytes(text)))
                .isEqualTo(event)
                .isEqualTo(CloudEvent.read(text).toStored());
        assertThat(EventReader.id(bytes(text))).contains("id-1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "{", "{\"specversion\":\"1.0\"}", "{\"id\":{}}", "nonsense"})
    void what_is_no_event_is_refused_and_has_no_id(String text) {
        assertThatThrownBy(() -> EventReader.read(bytes(text))).isInstanceOf(UnreadableEvent.class);
        assertThat(EventReader.id(bytes(text))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2027-05-14T09:00:00Z",
                "2024-02-29T23:59:59Z",
                "2027-05-14T09:00:00.007Z",
                "2027-05-14T09:00:00.1Z",
                "1969-12-31T23:59:59.999Z",
                "2027-05-14T24:00:00Z",
                "2027-05-14T09:00:00+02:00"
            })
    void instants_are_what_the_general_parser_says(String text) {
        assertThat(InstantText.parse(text)).isEqualTo(Instant.parse(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-02-29T09:00:00Z", "2027-05-14T09:60:00Z", "2027-05-14", "2027-05-14T09:00:0xZ"})
    void what_is_no_instant_is_refused(String text) {
        assertThatThrownBy(() -> InstantText.parse(text)).isInstanceOf(java.time.DateTimeException.class);
    }
}
