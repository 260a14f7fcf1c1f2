package stirtide.events.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;

class CloudEventTest {
    private static final StoredEvent FINISHED = new StoredEvent(
            "0197a000-0000-7000-8000-00000000abcd",
            "tidehouse/2027-05-14",
            42,
            Instant.parse("2027-05-14T09:00:00.120Z"),
            "bo",
            "command-0042",
            new DayEvent.BowlFinished("3b"));

    /** Source: CloudEvents 1.0.2, cloudevents/spec.md, section "Example". */
    private static final String PUBLISHED = """
            {
              "specversion" : "1.0",
              "type" : "com.github.pull_request.opened",
              "source" : "https://github.com/cloudevents/spec/pull",
              "subject" : "123",
              "id" : "A234-1234-1234",
              "time" : "2018-04-05T17:31:00Z",
              "comexampleextension1" : "value",
              "comexampleothervalue" : 5,
              "datacontenttype" : "text/xml",
              "data" : "<much wow=\\"xml\\"/>"
            }""";

    @Test
    void the_published_example_is_read_attribute_by_attribute() {
        assertThat(CloudEvent.read(PUBLISHED))
                .isEqualTo(new CloudEvent(
                        "A234-1234-1234",
                        "https://github.com/cloudevents/spec/pull",
                        "com.github.pull_request.opened",
                        Optional.of("123"),
                        Optional.of(Instant.parse("2018-04-05T17:31:00Z")),
                        Optional.of("text/xml"),
                        Optional.empty(),
                        new java.util.TreeMap<>(Map.<String, JsonNode>of(
                                "comexampleextension1", TextNode.valueOf("value"),
                                "comexampleothervalue", IntNode.valueOf(5))),
                        TextNode.valueOf("<much wow=\"xml\"/>")));
    }

    @Test
    void the_published_example_survives_writing() {
        var event = CloudEvent.read(PUBLISHED);
        assertThat(CloudEvent.read(event.write())).isEqualTo(event);
    }

    /** Source: CloudEvents 1.0.2, formats/json-format.md: a null subject is the same as none. */
    @Test
    void a_null_subject_is_no_subject() {
        var event = CloudEvent.read("""
                {"specversion":"1.0","id":"C234-1234-1234","source":"/mycontext","type":"com.example.someevent",
                 "subject":null,"data":{"appinfoA":"abc","appinfoB":123,"appinfoC":true}}""");
        assertThat(event.subject()).isEmpty();
        assertThat(event.write()).doesNotContain("subject");
        assertThat(event.data().get("appinfoB").asInt()).isEqualTo(123);
    }

    @Test
    void an_event_of_ours_has_all_attributes() {
        assertThat(CloudEvent.of(FINISHED).write())
                .isEqualTo("{\"specversion\":\"1.0\",\"id\":\"0197a000-0000-7000-8000-00000000abcd\","
                        + "\"source\":\"/salons/tidehouse\",\"type\":\"stirtide.BowlFinished.v1\","
                        + "\"subject\":\"2027-05-14\",\"time\":\"2027-05-14T09:00:00.120Z\","
                        + "\"datacontenttype\":\"application/json\","
                        + "\"dataschema\":\"urn:stirtide:schema:events:BowlFinished.v1\",\"actor\":\"bo\","
                        + "\"commandid\":\"command-0042\",\"sequence\":\"0000000042\",\"data\":{\"bowl\":\"3b\"}}");
    }

    @Test
    void an_event_without_a_command_has_no_command_id() {
        var own = new StoredEvent(
                "x", "tidehouse/2027-05-14", 1, FINISHED.time(), "service", "", new DayEvent.DayClosed());
        assertThat(CloudEvent.of(own).write()).doesNotContain("commandid");
        assertThat(CloudEvent.read(CloudEvent.of(own).write()).toStored()).isEqualTo(own);
    }

    @ParameterizedTest
    @ValueSource(strings = {"stirtide.BowlPolished.v1", "stirtide.BowlFinished.v2", "somebody.BowlFinished.v1", "?"})
    void a_type_from_another_release_stops_the_reading(String type) {
        var newer =
                CloudEvent.of(FINISHED).write().replace("stirtide.BowlFinished.v1\",\"subject", type + "\",\"subject");
        assertThatThrownBy(() -> CloudEvent.read(newer).toStored())
                .isInstanceOf(UnreadableEvent.class)
                .hasMessageContaining(type)
                .hasMessageContaining("0000000042");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "{}",
                "nonsense",
                "{\"specversion\":\"0.3\",\"id\":\"1\",\"source\":\"/a\",\"type\":\"b\"}",
                "{\"specversion\":\"1.0\",\"source\":\"/a\",\"type\":\"b\"}",
                "{\"specversion\":\"1.0\",\"id\":\"1\",\"source\":\"/a\",\"type\":\"b\",\"time\":\"yesterday\"}"
            })
    void text_that_is_no_event_is_refused(String text) {
        assertThatThrownBy(() -> CloudEvent.read(text)).isInstanceOf(UnreadableEvent.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"bowl\":7}", "{}", "{\"bowl\":\"3b\",\"more\":1}", "[]", "null"})
    void data_that_do_not_fit_stop_the_reading(String data) {
        var broken = CloudEvent.of(FINISHED).write().replace("{\"bowl\":\"3b\"}", data);
        assertThatThrownBy(() -> CloudEvent.read(broken).toStored()).isInstanceOf(UnreadableEvent.class);
    }

    @Test
    void an_older_version_is_brought_up_step_by_step() {
        var upcasters = new Upcasters(Map.of(
                "BowlFinished.v1",
                data -> data.put("second", true),
                "BowlFinished.v2",
                data -> data.put("third", true)));
        var data = ContractJson.mapper().createObjectNode().put("bowl", "3b");
        assertThat(upcasters.bring("BowlFinished", 1, 3, data).orElseThrow().toString())
                .isEqualTo("{\"bowl\":\"3b\",\"second\":true,\"third\":true}");
        assertThat(upcasters.bring("BowlFinished", 1, 4, data)).isEmpty();
        assertThat(upcasters.bring("BowlFinished", 3, 2, data)).isEmpty();
        assertThat(upcasters.bring("BowlFinished", 2, 2, data)).contains(data);
    }
}
