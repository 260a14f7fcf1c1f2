package stirtide.planner.allowance;

import java.math.BigInteger;
import java.time.LocalDate;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stirtide.events.setup.UseHistory.PastUse;

/**
 * Allowances that learn. Grams used are log-normal around the menu's base grams times the factors of length and
 * density, with unknown mean and variance; what is planned is the quantile of the next visit at the fraction set.
 */
public final class Allowances {
    private static final int STEP_MILLIGRAMS = 100;

    private Allowances() {}

    /** Grams to plan for a zone, from what earlier visits of the same menu entry and zone used. */
    public static Allowance of(ZoneAsked asked, List<PastUse> history, AllowanceSettings settings) {
        UsagePosterior learned = new UsagePosterior(history, asked, settings);
        NormalInverseGamma known = learned.forClient();
        double fraction = settings.fractionPermille() / 1000.0;
        int median = roundedUp(asked.expectedMilligrams() * Math.exp(known.mean()));
        int planned = roundedUp(asked.expectedMilligrams() * Math.exp(known.predictiveQuantile(fraction)));
        int visits = learned.taken().size();
        if (asked.pinnedMilligrams().isPresent()) {
            int medium = asked.pinnedMilligrams().get();
            int pinned =
                    roundedUp(ZoneAsked.expectedMilligrams(medium, asked.lengthPermille(), asked.densityPermille()));
            String hair = pinned == medium ? "" : ", " + grams(medium) + " g for medium hair";
            String sentence =
                    grams(pinned) + " g: pinned by a manager" + hair + "; learned would be " + grams(planned) + " g";
            return new Allowance(pinned, pinned, visits, learned.setAside(), Allowance.Source.PINNED, sentence);
        }
        String sentence = grams(planned) + " g: " + reasons(asked, learned) + "; enough " + often(settings);
        return new Allowance(
                planned, Math.min(median, planned), visits, learned.setAside(), Allowance.Source.LEARNED, sentence);
    }

    /**
     * Grams to plan because the client's last visit used them; what is learned beyond the median is still carried by the last
     * bowl.
     *
     * @param on day of that visit
     * @param usedMilligrams grams it used, 1 or more
     * @param learned what is learned of the zone, if anything is
     */
    public static Allowance asLastTime(LocalDate on, int usedMilligrams, Optional<Allowance> learned) {
        int safety = learned.map(Allowance::safetyMilligrams).orElse(0);
        String more = safety == 0 ? "" : "; " + grams(safety) + " g more on the last bowl";
        return new Allowance(
                usedMilligrams + safety,
                usedMilligrams,
                learned.map(Allowance::visits).orElse(1),
                learned.map(Allowance::setAside).orElse(0),
                Allowance.Source.LAST_TIME,
                grams(usedMilligrams) + " g: as on " + on + more);
    }

    /**
     * Grams a stretch of work still needs, sized again from what was really used. The part done says as much about this
     * visit as its share of the work: at half way, what was seen and what was expected count the same.
     *
     * @param medianMilligrams grams the whole was expected to need, 1 or more
     * @param plannedMilligrams grams that were to be enough as often as was set, not below the median
     * @param usedMilligrams what was used so far, 0 or more
     * @param donePermille how much of the whole is done, in thousandths, 0 to 999
     */
    public static Rest rest(int medianMilligrams, int plannedMilligrams, int usedMilligrams, int donePermille) {
        if (donePermille < 0 || donePermille > 999)
            throw new IllegalArgumentException("donePermille must be 0 to 999: " + donePermille);
        double done = donePermille / 1000.0;
        double shift = usedMilligrams > 0 && done > 0 ? done * Math.log(usedMilligrams / (medianMilligrams * done)) : 0;
        double center = medianMilligrams * (1 - done) * Math.exp(shift);
        double safety = Math.log((double) plannedMilligrams / medianMilligrams) * Math.sqrt(1 - done);
        int expected = roundedUp(center);
        return new Rest(expected, Math.max(0, roundedUp(center * Math.exp(safety)) - expected));
    }

    /**
     * What is still needed.
     *
     * @param expectedMilligrams grams that are enough every other time, rounded up to 0.1 g
     * @param safetyMilligrams grams beyond, for the last bowl
     */
    public record Rest(int expectedMilligrams, int safetyMilligrams) {}

    private static int roundedUp(double milligrams) {
        double steps = Math.ceil(milligrams / STEP_MILLIGRAMS);
        return steps > Integer.MAX_VALUE / STEP_MILLIGRAMS
                ? Integer.MAX_VALUE / STEP_MILLIGRAMS * STEP_MILLIGRAMS
                : (int) steps * STEP_MILLIGRAMS;
    }

    private static String reasons(ZoneAsked asked, UsagePosterior learned) {
        List<PastUse> visits = learned.taken();
        String aside = learned.setAside() == 0 ? "" : ", " + learned.setAside() + " set aside as far out";
        if (visits.isEmpty())
            return "no earlier " + asked.zone() + " to learn from, the menu says " + menu(asked) + " g" + aside;
        String all = visits.size() == 1
                ? "1 earlier " + asked.zone() + " used "
                : visits.size() + " earlier " + asked.zone() + " used ";
        List<PastUse> own = learned.ofClient();
        String client = own.isEmpty() ? "" : ", this client " + range(own) + " g";
        return all + range(visits) + " g" + client + aside;
    }

    private static String menu(ZoneAsked asked) {
        return grams((int) Math.round(asked.expectedMilligrams()));
    }

    private static String range(List<PastUse> visits) {
        IntStream used = visits.stream().mapToInt(PastUse::usedMilligrams);
        IntSummaryStatistics all = used.summaryStatistics();
        String least = grams(all.getMin());
        String most = grams(all.getMax());
        return least.equals(most) ? least : least + " to " + most;
    }

    private static String often(AllowanceSettings settings) {
        int divisor = BigInteger.valueOf(settings.fractionPermille())
                .gcd(BigInteger.valueOf(1000))
                .intValue();
        int times = settings.fractionPermille() / divisor;
        return times + (times == 1 ? " time in " : " times in ") + 1000 / divisor;
    }

    /** Whole grams, rounded up: the explanation must not promise less than is planned. */
    private static String grams(int milligrams) {
        return Integer.toString((milligrams + 999) / 1000);
    }
}
