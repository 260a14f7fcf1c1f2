package stirtide.events.view;

import java.util.List;
import java.util.Optional;
import stirtide.events.setup.PastVisit;

/**
 * What is remembered of the client of one service, and two visits side by side.
 *
 * @param service service number
 * @param clientRef client as booked
 * @param visits all visits remembered, newest first
 * @param asLastTime whether the last formula is planned again
 * @param lastTime for each zone of the booking, whether the last formula can be had again
 * @param sideBySide two visits compared, empty when fewer than two are remembered
 */
public record VisitsView(
        int service,
        String clientRef,
        List<PastVisit> visits,
        boolean asLastTime,
        List<ZoneAgain> lastTime,
        Optional<SideBySide> sideBySide) {

    /**
     * One zone of the booking. {@code answer} is EXACT, NEAREST (something no longer allows it, the ratio and strength
     * here are the nearest allowed) or NEW (nothing is remembered of the zone).
     */
    public record ZoneAgain(
            String zone,
            String answer,
            String lightenerId,
            int strengthHundredths,
            int ratioThousandths,
            int usedMilligrams,
            String sentence) {}

    /** Two visits; {@code first} is the earlier. Dates as text. */
    public record SideBySide(String first, String second, List<Row> rows) {}

    /** One figure of one zone in both visits; what is not known is {@code "-"}. */
    public record Row(String zone, String figure, String first, String second, boolean differs) {}
}
