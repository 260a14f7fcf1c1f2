package stirtide.events.day;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Instant;
import java.util.Optional;

/**
 * One booked lightening service.
 *
 * @param bookingUid id of the booking in the calendar it came from, unique on the day
 * @param menuId menu entry that is booked
 * @param chair chair number, from 1
 * @param start when the client is to be in the chair
 * @param clientRef initials or a number, never more than needed; may be empty text
 * @param length hair length, a key of the menu's length factors
 * @param density hair density, a key of the menu's density factors
 * @param stylistId person who applies, if known
 * @param earlierMinutes how much earlier the service may be moved, 0 or more
 * @param laterMinutes how much later the service may be moved, 0 or more
 * @param tests when strand and patch test were done, empty when nothing is recorded
 * @param asLastTime whether the formula of the client's last visit is wanted again, empty for no
 */
@RecordBuilder
public record Booking(
        String bookingUid,
        String menuId,
        int chair,
        Instant start,
        String clientRef,
        String length,
        String density,
        Optional<String> stylistId,
        int earlierMinutes,
        int laterMinutes,
        Optional<ClientTests> tests,
        Optional<Boolean> asLastTime)
        implements BookingBuilder.With {}
