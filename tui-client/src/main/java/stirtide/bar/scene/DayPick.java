package stirtide.bar.scene;

/**
 * What is picked in the view of the day.
 *
 * @param sort what the grams are sorted by
 * @param row picked row, from 0
 */
public record DayPick(Sort sort, int row) {
    /** By cause, first row. */
    public static final DayPick FIRST = new DayPick(Sort.CAUSE, 0);

    /** What over-mixed grams are sorted by. */
    public enum Sort {
        /** Why they did not go on hair. */
        CAUSE("cause"),
        /** Booked service. */
        SERVICE("service"),
        /** Who applied. */
        STYLIST("stylist"),
        /** Lightener. */
        LIGHTENER("lightener"),
        /** Chair. */
        CHAIR("chair"),
        /** Bowl. */
        BOWL("bowl");

        private final String word;

        Sort(String word) {
            this.word = word;
        }

        /** The word for it. */
        public String word() {
            return word;
        }
    }

    /** The next or the previous way to sort, from its first row. */
    public DayPick sorted(int step) {
        Sort[] all = Sort.values();
        return new DayPick(all[Math.floorMod(sort.ordinal() + step, all.length)], 0);
    }

    /** Some rows further; stops at both ends of {@code rows} rows. */
    public DayPick moved(int step, int rows) {
        return new DayPick(sort, Math.max(0, Math.min(Math.max(0, rows - 1), row + step)));
    }
}
