package stirtide.bar.scale;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * A data report of a scale as the USB HID usage tables define it, page 0x8D: status, unit, power of ten, and a weight of
 * two bytes, low byte first; before them the number of the report where reports are numbered.
 *
 * @param status 1 fault, 2 at rest at zero, 3 moving, 4 at rest, 5 below zero, 6 over the limit, 7 to be calibrated, 8 to
 *     be zeroed
 * @param unit 1 mg, 2 g, 3 kg, 4 carat and on to 12 pound
 * @param value weight in that unit
 */
record HidReport(int status, int unit, BigDecimal value) {
    private static final int NUMBERED_BYTES = 6;
    private static final int PLAIN_BYTES = 5;
    private static final int BYTE = 0xff;
    private static final int BYTE_VALUES = 256;
    private static final int ZERO = 2;
    private static final int MOVING = 3;
    private static final int AT_REST = 4;
    private static final int MILLIGRAM = 1;
    private static final int KILOGRAM = 3;
    private static final List<String> UNITS = List.of(
            "mg",
            "g",
            "kg",
            "carat",
            "tael",
            "grain",
            "pennyweight",
            "metric ton",
            "ton",
            "troy ounce",
            "ounce",
            "pound");
    private static final List<String> STATES = List.of(
            "reports a fault",
            "",
            "",
            "",
            "is below zero: zero it",
            "carries too much: take some off",
            "wants to be calibrated",
            "wants to be zeroed");
    private static final BigDecimal MOST = BigDecimal.valueOf(Integer.MAX_VALUE);

    /** Reads the bytes of one report, empty when they are none. */
    static Optional<HidReport> of(byte[] bytes, int length) {
        if (length != NUMBERED_BYTES && length != PLAIN_BYTES) return Optional.empty();
        int at = length - PLAIN_BYTES;
        int counts = (bytes[at + 3] & BYTE) + BYTE_VALUES * (bytes[at + 4] & BYTE);
        // The power of ten is a signed byte: 0xFF is -1.
        BigDecimal value = BigDecimal.valueOf(counts).scaleByPowerOfTen(bytes[at + 2]);
        return Optional.of(new HidReport(bytes[at] & BYTE, bytes[at + 1] & BYTE, value));
    }

    /** The report as a reading. Weights in units other than grams are rejected, so that no person has to convert. */
    ScaleReading reading() {
        if (status < 1 || status > STATES.size()) return unusable("says something unknown (" + status + ")");
        String trouble = STATES.get(status - 1);
        if (!trouble.isEmpty()) return unusable(trouble);
        if (unit < MILLIGRAM || unit > KILOGRAM) {
            String name = unit < 1 || unit > UNITS.size() ? "an unknown unit" : UNITS.get(unit - 1);
            return unusable("shows " + name + ": switch it to g");
        }
        BigDecimal milligrams = value.scaleByPowerOfTen(3 * (unit - 1)).setScale(0, RoundingMode.HALF_UP);
        if (milligrams.compareTo(MOST) > 0) return unusable("shows more than can be");
        boolean atRest = status == AT_REST || status == ZERO;
        return new ScaleReading.Weight(milligrams.intValueExact(), atRest && status != MOVING);
    }

    private static ScaleReading unusable(String what) {
        return new ScaleReading.Unusable("the scale " + what);
    }
}
