package stirtide.bar.panels.form;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import stirtide.bar.text.TimeText;

/** Fields for a time of day such as {@code 14:05}. */
public final class TimeField {
    private TimeField() {}

    /** A field that begins with a time. */
    public static TextField of(String label, Instant first, ZoneId zone) {
        return new TextField(
                label,
                5,
                letter -> letter == ':' || Character.isDigit(letter),
                "([01]\\d|2[0-3]):[0-5]\\d",
                "a time such as 14:05",
                TimeText.minute(first, zone));
    }

    /** The time typed, on a date; the field must be valid. */
    public static Instant instant(TextField field, LocalDate date, ZoneId zone) {
        return date.atTime(LocalTime.parse(field.text())).atZone(zone).toInstant();
    }
}
