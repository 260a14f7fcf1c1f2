package stirtide.planner.salonfiles.json;

import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.PropertyName;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.AnnotatedParameter;
import com.fasterxml.jackson.databind.introspect.NopAnnotationIntrospector;
import com.fasterxml.jackson.databind.ser.std.StdScalarSerializer;
import com.fasterxml.jackson.databind.util.StdConverter;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.Scale;
import stirtide.mixing.text.AmountText;

/**
 * Derives the form of a record in a file from the units in the names of its components, for reading and writing: {@code
 * baseMilligrams} is written as {@code "baseGrams": 32.5}, {@code ratioThousandths} as {@code "ratio": "1:2"}. Constants of
 * enumerations are written in small letters, accuracy classes as they are on the plate.
 */
final class UnitNaming extends NopAnnotationIntrospector {
    private static final long serialVersionUID = 1L;

    /**
     * A unit at the end of a component's name.
     *
     * @param suffix how the name ends
     * @param written how the key ends instead
     * @param decimals power of ten between the whole number and the decimal number in the file
     */
    private record Unit(String suffix, String written, int decimals) {}

    private static final int RATIO = -1;
    private static final List<Unit> UNITS = List.of(
            new Unit("Milligrams", "Grams", 3),
            new Unit("Factors", "Factors", 3),
            new Unit("trengthHundredths", "trengthPercent", 2),
            new Unit("Tenths", "", 1),
            new Unit("Thousandths", "", RATIO));
    private static final Map<String, String> OTHER_KEYS =
            Map.of("on", "date", "resetOn", "learnedFrom", "stepTenths", "chartStep", "inServiceLimits", "limits");

    private static Optional<Unit> unit(Annotated field) {
        return UNITS.stream()
                .filter(unit -> name(field).endsWith(unit.suffix()))
                .findFirst();
    }

    /** Name of the component that an accessor, a field or a parameter of the constructor belongs to. */
    private static String name(Annotated field) {
        return field instanceof AnnotatedParameter parameter
                        && parameter.getDeclaringClass().isRecord()
                ? parameter
                        .getDeclaringClass()
                        .getRecordComponents()[parameter.getIndex()]
                        .getName()
                : field.getName();
    }

    private static boolean isContent(Annotated field) {
        return field.getRawType() == Optional.class || Map.class.isAssignableFrom(field.getRawType());
    }

    @Override
    public @Nullable PropertyName findNameForSerialization(Annotated field) {
        String name = name(field);
        if (OTHER_KEYS.containsKey(name)) return PropertyName.construct(OTHER_KEYS.get(name));
        return unit(field)
                .map(unit -> name.substring(0, name.length() - unit.suffix().length()) + unit.written())
                .map(PropertyName::construct)
                .orElse(null);
    }

    @Override
    public @Nullable PropertyName findNameForDeserialization(Annotated field) {
        return findNameForSerialization(field);
    }

    @Override
    public @Nullable Object findSerializer(Annotated field) {
        return isContent(field) ? null : writer(field);
    }

    @Override
    public @Nullable Object findContentSerializer(Annotated field) {
        return isContent(field) ? writer(field) : null;
    }

    @Override
    public @Nullable Object findDeserializer(Annotated field) {
        return isContent(field) ? null : reader(field);
    }

    @Override
    public @Nullable Object findContentDeserializer(Annotated field) {
        return isContent(field) ? reader(field) : null;
    }

    @Override
    public @Nullable Object findSerializationConverter(Annotated field) {
        return name(field).equals("inServiceLimits") ? new LimitsWriter() : null;
    }

    @Override
    public @Nullable Object findDeserializationConverter(Annotated field) {
        return name(field).equals("inServiceLimits") ? new LimitsReader() : null;
    }

    /** Prices are text, so that no program between reads them as binary fractions. */
    @Override
    public JsonFormat.@Nullable Value findFormat(Annotated field) {
        return name(field).endsWith("Price") ? JsonFormat.Value.forShape(JsonFormat.Shape.STRING) : null;
    }

    /** The ratio of an earlier visit stands before its strength. */
    @Override
    public String @Nullable [] findSerializationPropertyOrder(AnnotatedClass type) {
        return type.getRawType() == PastVisit.PastZone.class
                ? new String[] {"zone", "technique", "lightenerId", "ratio", "strengthPercent"}
                : null;
    }

    private static @Nullable Object writer(Annotated field) {
        return unit(field).map(unit -> new UnitWriter(unit.decimals())).orElse(null);
    }

    private static @Nullable Object reader(Annotated field) {
        return unit(field).map(unit -> new UnitReader(unit.decimals())).orElse(null);
    }

    @Override
    public String[] findEnumValues(MapperConfig<?> config, AnnotatedClass type, Enum<?>[] constants, String[] names) {
        for (int i = 0; i < constants.length; i++)
            if (type.getRawType() != Scale.AccuracyClass.class)
                names[i] = constants[i].name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return names;
    }

    private static final class UnitWriter extends StdScalarSerializer<Integer> {
        private static final long serialVersionUID = 1L;
        private final int decimals;

        UnitWriter(int decimals) {
            super(Integer.class);
            this.decimals = decimals;
        }

        @Override
        public void serialize(Integer value, JsonGenerator out, SerializerProvider provider) throws IOException {
            if (decimals == RATIO) out.writeString(AmountText.ratio(value));
            else out.writeNumber(BigDecimal.valueOf(value, decimals).stripTrailingZeros());
        }
    }

    private static final class UnitReader extends StdScalarDeserializer<Integer> {
        private static final long serialVersionUID = 1L;
        private final int decimals;

        UnitReader(int decimals) {
            super(Integer.class);
            this.decimals = decimals;
        }

        @Override
        public Integer deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            if (decimals == RATIO)
                return new BigDecimal(parser.getText().substring(2))
                        .movePointRight(3)
                        .intValueExact();
            return parser.getDecimalValue().movePointRight(decimals).intValueExact();
        }
    }

    private static final class LimitsWriter extends StdConverter<Boolean, String> {
        @Override
        public String convert(Boolean inService) {
            return inService ? "in service" : "initial";
        }
    }

    private static final class LimitsReader extends StdConverter<String, Boolean> {
        @Override
        public Boolean convert(String limits) {
            return limits.equals("in service");
        }
    }
}
