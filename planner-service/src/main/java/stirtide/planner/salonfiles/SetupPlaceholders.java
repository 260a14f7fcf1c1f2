package stirtide.planner.salonfiles;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;

/** Right and meaningless pieces for lists that are still empty. They are read, never kept. */
final class SetupPlaceholders {
    private static final Map<String, String> LISTS =
            Map.of("people", """
            [{"personId": "x", "name": "x", "role": "assistant", "shifts": []}]""", "scales", """
            [{"scaleId": "x", "accuracyClass": "II", "limits": "in service", "weighing": "tare between",
              "minimumGrams": 0, "ranges": [{"maximumGrams": 1, "divisionGrams": 0.1, "verificationGrams": 0.1}]}]""", "bowls", """
            [{"bowlSizeId": "x", "usableGrams": 1, "residueGrams": 0, "count": 1}]""", "developers", """
            [{"developerId": "x", "name": "x", "strengthPercent": 12, "packGrams": 1, "packPrice": "0"}]""", "entries", """
            [{"menuId": "x", "name": "x", "zones": [{"zone": "x", "technique": "x", "lightenerId": "x",
              "strengthPercent": 1, "ratio": "1:1", "baseGrams": 1, "applyMinutes": 1, "processMinutes": 1,
              "section": 1}]}]""");

    private SetupPlaceholders() {}

    static JsonNode of(String list) {
        try {
            return new ObjectMapper().readTree(LISTS.getOrDefault(list, "[]"));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
