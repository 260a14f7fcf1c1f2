package stirtide.events.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.stream.Collectors;

/** Says what is wrong with a text that is no record of the contract, without a word about how it was read. */
final class InvalidContractJson {
    private static final Map<Class<?>, String> EXAMPLES = Map.of(
            Instant.class, "an instant; write it like 2027-03-09T10:00:00Z",
            LocalDate.class, "a day of the calendar; write it like 2027-03-09",
            int.class, "a whole number that fits; -2147483648 to 2147483647 do",
            Integer.class, "a whole number that fits; -2147483648 to 2147483647 do",
            long.class, "a whole number that fits");

    private InvalidContractJson() {}

    /** One sentence with the place, where one is known. */
    static String sentence(JsonProcessingException unfit) {
        if (!(unfit instanceof JsonMappingException mapping)) return plain(unfit.getOriginalMessage());
        String place = place(mapping);
        return place.isEmpty() ? reason(mapping) : reason(mapping) + ", at " + place;
    }

    private static String reason(JsonMappingException unfit) {
        if (unfit instanceof UnrecognizedPropertyException unknown)
            return "there is no field \"" + unknown.getPropertyName() + "\"; accepted are "
                    + unknown.getKnownPropertyIds();
        if (unfit instanceof InvalidFormatException wrong)
            return "\"" + wrong.getValue() + "\" is not "
                    + EXAMPLES.getOrDefault(wrong.getTargetType(), "accepted; openapi.yaml lists what is");
        Throwable innermost = unfit;
        while (innermost.getCause() != null) innermost = innermost.getCause();
        // Records refuse values with a sentence of their own.
        if (innermost instanceof IllegalArgumentException) return plain(String.valueOf(innermost.getMessage()));
        return plain(unfit.getOriginalMessage());
    }

    private static String place(JsonMappingException unfit) {
        return unfit.getPath().stream()
                .map(step -> step.getFieldName() == null ? "[" + step.getIndex() + "]" : step.getFieldName())
                .collect(Collectors.joining("."));
    }

    /** Names of classes and of methods say nothing to whoever wrote the text. */
    private static String plain(String message) {
        return message.lines()
                .findFirst()
                .orElse("the text cannot be read")
                .replaceAll(",? ?(from|of type|of|for type) `[^`]*`", "")
                .replaceAll("`[^`]*`", "it")
                .replaceAll("\\([a-z]+(\\.[A-Za-z$]+)+\\)", "");
    }
}
