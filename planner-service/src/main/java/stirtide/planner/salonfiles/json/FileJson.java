package stirtide.planner.salonfiles.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.AnnotationIntrospector;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.util.Optional;
import stirtide.planner.salonfiles.json.FieldPath.Located;
import stirtide.planner.salonfiles.source.SourceFile;

/** Turns the JSON of a salon's files into records and back. What a file may hold is decided by its schema before. */
public final class FileJson {
    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .annotationIntrospector(AnnotationIntrospector.pair(new UnitNaming(), new JacksonAnnotationIntrospector()))
            .addModule(new Jdk8Module())
            .addModule(new JavaTimeModule())
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            // Keys that only the schema and the rules look at, such as volumes beside a strength.
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            // Lists and texts that are left out.
            .defaultSetterInfo(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY))
            .defaultPropertyInclusion(
                    JsonInclude.Value.construct(JsonInclude.Include.NON_ABSENT, JsonInclude.Include.NON_ABSENT))
            .build();

    private FileJson() {}

    /** Reads a file into its record, or empty after its problems were reported. */
    public static <T> Optional<Located<T>> read(String text, SourceFile source, FileSchema schema, Class<T> type) {
        return LocatedJsonParser.parse(text, source)
                .filter(schema::fits)
                .filter(ValueFormats::check)
                .map(json -> new Located<>(record(json, type), json.top()));
    }

    private static <T> T record(LocatedJson json, Class<T> type) {
        try {
            return MAPPER.treeToValue(json.root(), type);
        } catch (JsonProcessingException unfit) {
            throw new IllegalStateException("fits its schema but is no " + type.getSimpleName(), unfit);
        }
    }

    /** Writes a file record as indented JSON. */
    public static String write(Object file) {
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(file) + "\n";
        } catch (JsonProcessingException unwritable) {
            throw new IllegalArgumentException("cannot be written as a file: " + file.getClass(), unwritable);
        }
    }
}
