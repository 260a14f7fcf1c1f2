package stirtide.planner.views;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.view.PourAdvice;
import stirtide.events.view.PourAdvice.Kind;
import stirtide.mixing.formula.NextPour;
import stirtide.mixing.formula.Pour;
import stirtide.planner.day.bowl.NextPours;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;

/** What to pour next into a live bowl, for a terminal beside the scale. */
public final class PourAdvices {
    private PourAdvices() {}

    /**
     * Reads what was poured into a bowl, or into the whole mix while it is not divided: {@code lightener:30000,dev-9:60500} in the order of pouring, empty text for nothing.
     *
     * @param poured part and milligrams with a colon between, pours with commas between
     */
    public static PourAdvice of(Day day, BowlState live, String poured) {
        BowlState bowl = day.mixOf(live);
        String lightenerId = bowl.planned().lightenerId();
        List<Pour> pours = new ArrayList<>();
        for (String pour : poured.isEmpty() ? new String[0] : poured.split(",")) {
            int colon = pour.lastIndexOf(':');
            String part = pour.substring(0, colon);
            pours.add(new Pour(
                    part.equals(PourAdvice.LIGHTENER) ? lightenerId : part,
                    Integer.parseInt(pour.substring(colon + 1))));
        }
        NextPour next = NextPours.next(day, bowl, pours);
        return advice(bowl, next, NextPours.sentence(day, next));
    }

    private static PourAdvice advice(BowlState bowl, NextPour next, String sentence) {
        if (next instanceof NextPour.Add add) {
            String part = add.partId().equals(bowl.planned().lightenerId()) ? PourAdvice.LIGHTENER : add.partId();
            Kind kind = add.correction() ? Kind.CORRECT : Kind.ADD;
            return new PourAdvice(
                    bowl.bowl(), kind, sentence, Optional.of(part), add.milligrams(), add.displayMilligrams());
        }
        if (next instanceof NextPour.Ready) return plain(bowl, Kind.READY, sentence, 0);
        if (next instanceof NextPour.BinAndRestart bin)
            return plain(bowl, Kind.BIN_AND_RESTART, sentence, bin.lostMilligrams());
        return plain(bowl, Kind.UNREADABLE, sentence, 0);
    }

    private static PourAdvice plain(BowlState bowl, Kind kind, String sentence, int milligrams) {
        return new PourAdvice(bowl.bowl(), kind, sentence, Optional.empty(), milligrams, 0);
    }
}
