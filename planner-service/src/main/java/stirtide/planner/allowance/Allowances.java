package stirtide.planner.allowance;

import java.math.BigInteger;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Allowances that learn. Grams used are log-normal around the menu's base grams times the factors of length and
 * density, with unknown mean and variance; what is planned is the quantile of the next visit at the fraction set.
 */
public final class Allowances {
    private static final int STEP_MILLIGRAMS = 100;

    private Allowances() {}

    /** Grams to plan for a zone, from what earlier visits of the same menu entry and zone used. */
    public static Allowance of(ZoneAsked asked, List<UsedGrams> history, AllowanceSettings settings) {
        Learned learned = new Learned(history, asked, settings);
        NormalInverseGamma known = learned.forClient();
        double fraction = settings.fractionPermille() / 1000.0;
        int median = roundedUp(asked.expectedMilligrams() * Math.exp(known.mean()));
        int planned = roundedUp(asked.expectedMilligrams() * Math.exp(known.predictiveQuantile(fraction)));
        int visits = learned.taken().size();
        if (asked.pinnedMilligrams().isPresent()) {
            int pinned = asked.pinnedMilligrams().get();
            String sentence = grams(pinned) + " g: pinned by a manager; learned would be " + grams(planned) + " g";
            return new Allowance(pinned, Math.min(median, pinned), visits, learned.setAside(), sentence);
        }
        String sentence = grams(planned) + " g: " + reasons(asked, learned) + "; enough " + often(settings);
        return new Allowance(planned, Math.min(median, planned), visits, learned.setAside(), sentence);
    }

    /**
     * Grams the last bowl of a run must give, sized again when it is due. The part done tells as much about this visit
     * as its share of the work: at half way, what was seen and what was expected count the same.
     *
     * @param usedMilligrams what the zone has used so far, 0 or more
     * @param donePermille how much of the zone is done, in thousandths, 1 to 999
     */
    public static int stillNeeded(
            ZoneAsked asked,
            List<UsedGrams> history,
            AllowanceSettings settings,
            int usedMilligrams,
            int donePermille) {
        if (donePermille < 1 || donePermille > 999)
            throw new IllegalArgumentException("donePermille must be 1 to 999: " + donePermille);
        double done = donePermille / 1000.0;
        double expected = asked.expectedMilligrams();
        NormalInverseGamma known = new Learned(history, asked, settings).forClient();
        double mean = known.mean();
        if (usedMilligrams > 0) mean = (1 - done) * mean + done * Math.log(usedMilligrams / (expected * done));
        double safety = known.predictiveQuantile(settings.fractionPermille() / 1000.0) - known.mean();
        return roundedUp(expected * (1 - done) * Math.exp(mean + safety * Math.sqrt(1 - done)));
    }

    private static int roundedUp(double milligrams) {
        double steps = Math.ceil(milligrams / STEP_MILLIGRAMS);
        return steps > Integer.MAX_VALUE / STEP_MILLIGRAMS
                ? Integer.MAX_VALUE / STEP_MILLIGRAMS * STEP_MILLIGRAMS
                : (int) steps * STEP_MILLIGRAMS;
    }

    private static String reasons(ZoneAsked asked, Learned learned) {
        List<UsedGrams> visits = learned.taken();
        String aside = learned.setAside() == 0 ? "" : ", " + learned.setAside() + " set aside as far out";
        if (visits.isEmpty())
            return "no earlier " + asked.zone() + " to learn from, the menu says " + menu(asked) + " g" + aside;
        String all = visits.size() == 1
                ? "1 earlier " + asked.zone() + " used "
                : visits.size() + " earlier " + asked.zone() + " used ";
        List<UsedGrams> own = learned.ofClient();
        String client = own.isEmpty() ? "" : ", this client " + range(own) + " g";
        return all + range(visits) + " g" + client + aside;
    }

    private static String menu(ZoneAsked asked) {
        return grams((int) Math.round(asked.expectedMilligrams()));
    }

    private static String range(List<UsedGrams> visits) {
        IntStream used = visits.stream().mapToInt(UsedGrams::usedMilligrams);
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
