package stirtide.planner.salonfiles.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Map;
import stirtide.mixing.text.AmountText;

/**
 * What a schema cannot say and a record no longer shows: dates are dates of the calendar, and volumes beside a strength
 * agree with it.
 */
final class ValueFormats {
    private static final BigDecimal HUNDREDTHS_PER_VOLUME = BigDecimal.valueOf(30);

    private final LocatedJson json;
    private boolean datesExist = true;

    private ValueFormats(LocatedJson json) {
        this.json = json;
    }

    /** Refuses what does not hold in a document that fits its schema; says whether all its dates exist. */
    static boolean check(LocatedJson json) {
        ValueFormats formats = new ValueFormats(json);
        formats.check("", json.root());
        return formats.datesExist;
    }

    private void check(String pointer, JsonNode node) {
        if (node.isArray()) for (int i = 0; i < node.size(); i++) check(pointer + "/" + i, node.get(i));
        if (!node.isObject()) return;
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            String at = pointer + FieldPath.step(field.getKey());
            switch (field.getKey()) {
                case "date", "learnedFrom" -> checkDate(at, field.getValue());
                case "volumes" -> checkVolumes(at, field.getValue(), node.path("strengthPercent"));
                case "highestVolumes" -> checkVolumes(at, field.getValue(), node.path("highestStrengthPercent"));
                default -> check(at, field.getValue());
            }
        }
    }

    private void checkDate(String at, JsonNode date) {
        if (!date.isTextual()) return;
        try {
            LocalDate.parse(date.textValue());
        } catch (DateTimeException noSuchDate) {
            datesExist = false;
            json.refuse(at, FieldText.quoted(date.textValue()), "a date of the calendar, such as \"2027-03-12\"");
        }
    }

    private void checkVolumes(String at, JsonNode volumes, JsonNode percent) {
        if (!percent.isNumber()) return;
        BigDecimal written = volumes.decimalValue().stripTrailingZeros();
        int hundredths = percent.decimalValue().movePointRight(2).intValueExact();
        BigDecimal right = BigDecimal.valueOf(hundredths)
                .divide(HUNDREDTHS_PER_VOLUME, Math.max(0, written.scale()), RoundingMode.HALF_UP);
        if (right.compareTo(written) != 0)
            json.refuse(
                    at,
                    volumes.decimalValue().toPlainString(),
                    FieldText.volumes(hundredths) + ", because " + AmountText.percent(hundredths) + " is "
                            + AmountText.strength(hundredths));
    }
}
