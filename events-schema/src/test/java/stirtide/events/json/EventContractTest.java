package stirtide.events.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.events.day.DayEvent;
import stirtide.events.json.EventTypes.EventType;

/** Every event has a name, a JSON Schema (draft 2020-12), a golden sample, and reads back as it was written. */
class EventContractTest {
    private static String schemaResource(EventType type) {
        return "/schema/events/" + type.name() + ".v" + type.version() + ".json";
    }

    static List<EventType> types() {
        return EventTypes.all();
    }

    @Test
    void every_permitted_event_has_a_wire_name() {
        assertThat(EventTypes.all().stream().map(EventType::record))
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(DayEvent.class.getPermittedSubclasses())
                        .<Class<? extends DayEvent>>map(one -> one.asSubclass(DayEvent.class))
                        .toList());
        assertThat(EventTypes.all().stream().map(EventType::name)).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("types")
    void the_sample_is_valid_by_its_schema_and_by_the_envelope(EventType type) {
        var sample = tree(sample(type));
        assertThat(schema(schemaResource(type)).validate(sample.get("data"))).isEmpty();
        assertThat(schema("/schema/events/Envelope.v1.json").validate(sample)).isEmpty();
        assertThat(sample.get("dataschema").asText()).isEqualTo(type.dataSchema());
    }

    @ParameterizedTest
    @MethodSource("types")
    void the_sample_reads_back_as_it_was_written(EventType type) {
        var stored = CloudEvent.read(sample(type)).toStored();
        assertThat(stored.event()).isInstanceOf(type.record());
        var written = CloudEvent.of(stored).write();
        assertThat(tree(written)).isEqualTo(tree(sample(type)));
        assertThat(CloudEvent.read(written).toStored()).isEqualTo(stored);
    }

    @Test
    void a_plan_with_a_batch_is_valid_and_reads_back_as_it_was_written() {
        var text = resource("/samples/PlanDrawn.v1.batch.json");
        assertThat(schema("/schema/events/PlanDrawn.v1.json")
                        .validate(tree(text).get("data")))
                .isEmpty();
        var stored = CloudEvent.read(text).toStored();
        assertThat(tree(CloudEvent.of(stored).write())).isEqualTo(tree(text));
        var plan = ((DayEvent.PlanDrawn) stored.event()).plan();
        assertThat(plan.batchOf("2a")).contains(plan.batches().get(0));
        assertThat(plan.beginOf(plan.bowls().get(1))).isEqualTo("2027-05-14T08:23:00Z");
        assertThat(plan.batchOf("3a")).isEmpty();
    }

    @Test
    void a_plan_of_before_there_were_batches_and_proofs_has_none() {
        var sample = (ObjectNode) tree(resource("/samples/PlanDrawn.v1.json"));
        var totals = (ObjectNode) sample.at("/data/plan/totals");
        totals.remove(List.of("mixedBound", "ageBound", "proof", "bowlReasons"));
        var stored = CloudEvent.read(sample.toString()).toStored();
        var plan = ((DayEvent.PlanDrawn) stored.event()).plan();
        assertThat(plan.batches()).isEmpty();
        assertThat(plan.totals().proof()).isEmpty();
        assertThat(plan.totals().bowlReasons()).isEmpty();
        assertThat(plan.totals().mixedBound()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("types")
    void the_schema_knows_exactly_the_components_of_the_record(EventType type) {
        var schema = tree(resource(schemaResource(type)));
        assertThat(schema.get("$id").asText()).isEqualTo(type.dataSchema());
        assertThat(schema.get("additionalProperties").asBoolean()).isFalse();
        assertThat(schema.get("properties").fieldNames())
                .toIterable()
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(type.record().getRecordComponents())
                        .map(component -> component.getName())
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("types")
    void a_field_nobody_agreed_on_is_invalid(EventType type) {
        var data = (ObjectNode) tree(sample(type)).get("data");
        data.put("surprise", 1);
        assertThat(schema(schemaResource(type)).validate(data)).isNotEmpty();
    }

    private static JsonSchema schema(String path) {
        var factory = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);
        var config =
                SchemaValidatorsConfig.builder().formatAssertionsEnabled(true).build();
        return factory.getSchema(SchemaLocation.of("urn:test" + path), tree(resource(path)), config);
    }

    static String sample(EventType type) {
        return resource("/samples/" + type.name() + ".v" + type.version() + ".json");
    }

    private static JsonNode tree(String json) {
        return ContractJson.read(json, JsonNode.class);
    }

    private static String resource(String path) {
        try (InputStream in = EventContractTest.class.getResourceAsStream(path)) {
            assertThat(in).as(path).isNotNull();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
