package stirtide.bar.model;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stirtide.events.view.DayView;

/**
 * What is selected in the view of the day.
 *
 * @param sort what the grams are sorted by
 * @param row picked row, from 0
 * @param period which days are summed
 */
public record OverMixSelection(Sort sort, int row, Period period) {
    /** By cause, first row, today. */
    public static final OverMixSelection FIRST = new OverMixSelection(Sort.CAUSE, 0);

    /** A pick of today. */
    public OverMixSelection(Sort sort, int row) {
        this(sort, row, Period.TODAY);
    }

    /** What over-mixed grams are sorted by. */
    public enum Sort {
        /** Why they did not go on hair. */
        CAUSE,
        SERVICE,
        /** Who applied. */
        STYLIST,
        LIGHTENER,
        CHAIR,
        BOWL;

        /** Those that can be compared from one day to the next. */
        public static final List<Sort> OF_MANY_DAYS = List.of(CAUSE, SERVICE, STYLIST, LIGHTENER);

        /** The word for it. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Which days are summed: this one, or it and those before it. */
    public enum Period {
        /** The day of the view. */
        TODAY("today", 1),
        /** A week that ends with it. */
        WEEK("7 days", 7),
        /** Four weeks that end with it. */
        FOUR_WEEKS("28 days", 28);

        private final String words;
        private final int days;

        Period(String words, int days) {
            this.words = words;
            this.days = days;
        }

        /** The period in words. */
        public String words() {
            return words;
        }

        /** The known days of the period, oldest first, the day of the view last. */
        public List<DayOverMix> of(DayView view, List<DayOverMix> past) {
            LocalDate before = view.date().minusDays(days);
            var known = new ArrayList<>(
                    past.stream().filter(day -> day.date().isAfter(before)).toList());
            known.add(DayOverMix.of(view));
            return List.copyOf(known);
        }
    }

    /** The next or the previous way to sort, from its first row. */
    public OverMixSelection sorted(int step) {
        Sort[] all = Sort.values();
        return new OverMixSelection(all[Math.floorMod(sort.ordinal() + step, all.length)], 0, period);
    }

    /** The next longer period, then today again. */
    public OverMixSelection otherPeriod() {
        Period[] all = Period.values();
        return new OverMixSelection(sort, 0, all[(period.ordinal() + 1) % all.length]);
    }

    /** Some rows further; stops at both ends of {@code rows} rows. */
    public OverMixSelection moved(int step, int rows) {
        return new OverMixSelection(sort, Math.max(0, Math.min(Math.max(0, rows - 1), row + step)), period);
    }
}
