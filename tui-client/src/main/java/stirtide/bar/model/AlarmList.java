package stirtide.bar.model;

import java.time.Instant;
import java.util.List;
import stirtide.events.view.AlarmCard;

/**
 * The alarms as this terminal shows them.
 *
 * @param rows rows to show, high first, then oldest
 * @param shelved how many alarms are shelved at this terminal
 * @param flood whether so many came that they are shown by kind
 * @param tally what came since the terminal was started
 */
public record AlarmList(List<Row> rows, int shelved, boolean flood, Tally tally) {
    /** The sign of a new alarm alternates for so long, then it is steady. */
    public static final long BLINK_NANOS = 5_000_000_000L;

    /** Half a turn of the sign: on and off make one second. */
    public static final long HALF_TURN_NANOS = 500_000_000L;

    /** No alarms. */
    public static final AlarmList NONE = of(List.of());

    public AlarmList {
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param alarms the alarm, or in a flood all of one kind
     * @param newsNanos monotonic reading when it last became news
     * @param unseen whether it is not acknowledged, or was raised again since
     */
    public record Row(List<AlarmCard> alarms, long newsNanos, boolean unseen) {
        public Row {
            alarms = List.copyOf(alarms);
        }

        /** The oldest alarm of the row. */
        public AlarmCard first() {
            return alarms.get(0);
        }

        /** Whether the sign is to be left out at this reading, because it alternates. */
        public boolean signIsOff(long nanos) {
            long age = nanos - newsNanos;
            return age >= 0 && age < BLINK_NANOS && age / HALF_TURN_NANOS % 2 == 1;
        }

        /** Whether the sign still alternates. */
        public boolean blinks(long nanos) {
            return nanos - newsNanos < BLINK_NANOS && nanos >= newsNanos;
        }
    }

    /**
     * Alarms since the terminal was started.
     *
     * @param since the salon's clock at the first picture
     * @param high how many of high priority
     * @param medium how many of medium priority
     * @param low how many of low priority
     * @param mostInTenMinutes most that came in any ten minutes
     * @param floodSeconds seconds of the salon's clock spent in floods
     * @param topKind kind that came most often, empty text for none
     * @param topCount how often
     */
    public record Tally(
            Instant since,
            int high,
            int medium,
            int low,
            int mostInTenMinutes,
            long floodSeconds,
            String topKind,
            int topCount) {
        /** Nothing yet. */
        public static final Tally NONE = new Tally(Instant.EPOCH, 0, 0, 0, 0, 0, "", 0);
    }

    /** The alarms of a picture one a row, none new, none shelved. */
    public static AlarmList of(List<AlarmCard> alarms) {
        long longAgo = -2 * BLINK_NANOS;
        var rows = alarms.stream()
                .map(alarm ->
                        new Row(List.of(alarm), longAgo, alarm.acknowledgedBy().isEmpty()))
                .toList();
        return new AlarmList(rows, 0, false, Tally.NONE);
    }

    /** Whether a sign alternates at this reading, so that pictures are needed twice a second. */
    public boolean blinks(long nanos) {
        return rows.stream().anyMatch(row -> row.blinks(nanos));
    }
}
