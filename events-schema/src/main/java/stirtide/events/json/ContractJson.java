package stirtide.events.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.core.util.BufferRecycler;
import com.fasterxml.jackson.core.util.JsonRecyclerPools;
import com.fasterxml.jackson.core.util.RecyclerPool;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.jsontype.NamedType;
import com.fasterxml.jackson.databind.type.LogicalType;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.stream.Stream;
import stirtide.events.command.DayCommand;

/** Writes records of the contract as JSON and reads them. */
public final class ContractJson {
    private static final int MAX_NESTING = 64;
    private static final int MAX_STRING = 64 * 1024;
    private static final int MAX_NUMBER = 40;
    private static final long MAX_DOCUMENT = 8L * 1024 * 1024;

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(MAX_NESTING)
                            .maxStringLength(MAX_STRING)
                            .maxNumberLength(MAX_NUMBER)
                            .maxDocumentLength(MAX_DOCUMENT)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .recyclerPool(freshBuffers())
                    .build())
            .registerSubtypes(EventTypes.all().stream()
                    .map(type -> new NamedType(type.record(), type.name()))
                    .toArray(NamedType[]::new))
            .registerSubtypes(Stream.of(DayCommand.class.getPermittedSubclasses())
                    .map(type -> new NamedType(type, type.getSimpleName()))
                    .toArray(NamedType[]::new))
            .addModule(new Jdk8Module())
            .addModule(new JavaTimeModule())
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .disable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS.mappedFeature())
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .withCoercionConfig(
                    LogicalType.Textual,
                    text -> text.setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
                            .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
                            .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail))
            .build();

    /** To look for names given twice takes a tenth of the time of reading. */
    private static final ObjectReader TRUSTING = MAPPER.reader().without(StreamReadFeature.STRICT_DUPLICATE_DETECTION);

    private ContractJson() {}

    /**
     * New buffers for every text read or written. Buffers that are used again keep what stood in the last text, and that
     * may be the word of a client whose key has been destroyed since.
     */
    public static RecyclerPool<BufferRecycler> freshBuffers() {
        return JsonRecyclerPools.nonRecyclingPool();
    }

    /** The mapper itself, for callers that stream or need trees. Do not reconfigure it. */
    public static ObjectMapper mapper() {
        return MAPPER;
    }

    /**
     * Writes a record of the contract as compact JSON.
     *
     * @throws IllegalArgumentException when the value is not of the contract
     */
    public static String write(Object value) {
        try {
            return MAPPER.writeValueAsString(value);
        } catch (JsonProcessingException notOfTheContract) {
            throw new IllegalArgumentException("cannot be written as JSON: " + value.getClass(), notOfTheContract);
        }
    }

    /**
     * Reads a record of the contract.
     *
     * @throws IllegalArgumentException with the place and reason when the text is not such a record
     */
    public static <T> T read(String json, Class<T> type) {
        try {
            return MAPPER.readValue(json, type);
        } catch (JsonProcessingException unreadable) {
            throw new IllegalArgumentException(InvalidContractJson.sentence(unreadable), unreadable);
        }
    }

    /**
     * Reads a record of the contract from the first bytes of an array, in UTF-8, often and from a service that writes no name
     * twice: of two the last counts.
     *
     * @param length how many bytes, from 0 up to all of them
     * @throws IllegalArgumentException with the place and reason when they are not such a record
     */
    public static <T> T read(byte[] json, int length, Class<T> type) {
        try {
            return TRUSTING.forType(type).readValue(json, 0, length);
        } catch (JsonProcessingException unreadable) {
            throw new IllegalArgumentException(unreadable.getOriginalMessage(), unreadable);
        } catch (IOException cannotBe) {
            throw new UncheckedIOException(cannotBe);
        }
    }
}
