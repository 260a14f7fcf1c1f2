package stirtide.demo.print;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import stirtide.bar.text.CountText;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Salon;

/** How many bowls of each size are in use or not yet washed at once, at most. */
final class BowlsAtOnce {
    private static final int[] WIDTHS = {30, -12, -12, -12};

    private BowlsAtOnce() {}

    /**
     * The most of a size at once.
     *
     * @param sizeId size of bowl
     * @param owned how many the bar owns
     * @param most how many are in use or not yet washed at once, 0 or more
     * @param at since when, if there is one
     */
    record Peak(String sizeId, int owned, int most, Instant at) {}

    static void write(SheetWriter page, PrepSheetDay day) {
        page.heading("BOWLS AT ONCE");
        page.row(WIDTHS, "size", "at most", "at", "you have");
        for (Peak peak : peaks(day))
            page.row(
                    WIDTHS,
                    peak.sizeId(),
                    Integer.toString(peak.most()),
                    peak.most() == 0 ? "-" : day.clock(peak.at()),
                    Integer.toString(peak.owned()));
        page.text(
                "",
                "In use from the start of the mix, and free again "
                        + CountText.of(day.setup().salon().washMinutes(), "minute")
                        + " after the last use, when it is washed. Spare ones for walk-ins and spills are not counted.");
    }

    /** The peak of each size of bowl, as the salon lists them. */
    static List<Peak> peaks(PrepSheetDay day) {
        List<MixRow> rows = MixRows.of(day);
        return day.setup().salon().bowls().stream()
                .map(size -> peak(day.setup().salon(), size, rows))
                .toList();
    }

    private static Peak peak(Salon salon, BowlSize size, List<MixRow> all) {
        List<MixRow> rows = all.stream()
                .filter(row -> row.sizeId().equals(size.bowlSizeId()))
                .toList();
        Peak none = new Peak(size.bowlSizeId(), size.count(), 0, Instant.EPOCH);
        // The number rises only where a mix begins.
        return rows.stream()
                .map(row -> new Peak(size.bowlSizeId(), size.count(), taken(salon, rows, row.begin()), row.begin()))
                .max(Comparator.comparingInt(Peak::most)
                        .thenComparing(
                                Peak::at, Comparator.<Instant>naturalOrder().reversed()))
                .orElse(none);
    }

    private static int taken(Salon salon, List<MixRow> rows, Instant at) {
        Duration wash = Duration.ofMinutes(salon.washMinutes());
        return (int) rows.stream()
                .filter(row ->
                        !row.begin().isAfter(at) && row.neededTo().plus(wash).isAfter(at))
                .count();
    }
}
