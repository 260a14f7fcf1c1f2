package stirtide.planner.allowance;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.apache.commons.statistics.distribution.NormalDistribution;
import stirtide.events.setup.UseHistory.PastUse;

/**
 * Salons with known truth: one zone each, ln of used over expected normal with the salon's own mean and spread, which
 * the allowance does not know. Whether a plan runs short is computed from the truth, not drawn, so the only chance left
 * is in the history. Run {@link #main} for the whole comparison.
 */
public final class SimulatedSalons {
    private static final int BASE = 50_000;
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    private SimulatedSalons() {}

    /** What is true of one salon, and what its visits used. */
    record Salon(double mean, double spread, List<PastUse> visits) {
        double probabilityShort(double plannedMilligrams) {
            return STANDARD.survivalProbability((Math.log(plannedMilligrams / BASE) - mean) / spread);
        }

        /** Expected grams left over: planned - E[min(used, planned)] for a log-normal. */
        double leftOverGrams(double plannedMilligrams) {
            double z = (Math.log(plannedMilligrams / BASE) - mean) / spread;
            double usedBelow = BASE * Math.exp(mean + spread * spread / 2) * STANDARD.cumulativeProbability(z - spread);
            return (plannedMilligrams * STANDARD.cumulativeProbability(z) - usedBelow) / 1000;
        }

        Allowance allowance(int visitsSeen, AllowanceSettings settings) {
            ZoneAsked asked = new ZoneAsked(
                    "foils", FIRST.plusDays(visitsSeen), "", BASE, 1000, 1000, Optional.empty(), Optional.empty());
            return Allowances.of(asked, visits.subList(0, visitsSeen), settings);
        }
    }

    static List<Salon> salons(int count, int visits, long seed) {
        Random random = new Random(seed);
        List<Salon> salons = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double mean = random.nextGaussian() * 0.2;
            double spread = 0.1 + 0.2 * random.nextDouble();
            List<PastUse> used = new ArrayList<>();
            for (int visit = 0; visit < visits; visit++) {
                double grams = BASE * Math.exp(mean + spread * random.nextGaussian());
                used.add(new PastUse(
                        FIRST.plusDays(visit), "menu", "zone", "c" + visit, BASE, 1000, 1000, (int) grams, false));
            }
            salons.add(new Salon(mean, spread, used));
        }
        return salons;
    }

    static double shareShort(List<Salon> salons, int visitsSeen, AllowanceSettings settings) {
        return salons.stream()
                .mapToDouble(salon -> salon.probabilityShort(
                        salon.allowance(visitsSeen, settings).plannedMilligrams()))
                .average()
                .orElseThrow();
    }

    /** One amount for all salons at which as many zones run short as with the learned allowances. */
    static double fixedAmountWithShare(List<Salon> salons, double shareShort) {
        double low = BASE * 0.2;
        double high = BASE * 5.0;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            double share = salons.stream()
                    .mapToDouble(salon -> salon.probabilityShort(middle))
                    .average()
                    .orElseThrow();
            if (share > shareShort) low = middle;
            else high = middle;
        }
        return high;
    }

    /** Mean of fixed minus learned left-over grams per zone, and half of its 95 % interval. */
    static double[] savedGrams(List<Salon> salons, double fixed, int visitsSeen, AllowanceSettings settings) {
        return savedGrams(salons, salon -> fixed, visitsSeen, settings);
    }

    /** The same against a multiple of the mean of what was seen. */
    static double[] savedAgainstMean(List<Salon> salons, double times, int visitsSeen, AllowanceSettings settings) {
        return savedGrams(salons, salon -> times * mean(salon, visitsSeen), visitsSeen, settings);
    }

    /** Per cent of salons that run short more than twice as often as set. */
    private static double farOff(List<Salon> salons, ToDoubleFunction<Salon> planned, double set) {
        long far = salons.stream()
                .filter(salon -> salon.probabilityShort(planned.applyAsDouble(salon)) > 2 * set)
                .count();
        return 100.0 * far / salons.size();
    }

    private static double[] savedGrams(
            List<Salon> salons, ToDoubleFunction<Salon> other, int visitsSeen, AllowanceSettings settings) {
        double[] saved = salons.stream()
                .mapToDouble(salon -> salon.leftOverGrams(other.applyAsDouble(salon))
                        - salon.leftOverGrams(
                                salon.allowance(visitsSeen, settings).plannedMilligrams()))
                .toArray();
        WeightedSample sample = WeightedSample.of(saved);
        double deviation = Math.sqrt(sample.squares() / (saved.length - 1));
        return new double[] {sample.mean(), 1.96 * deviation / Math.sqrt(saved.length)};
    }

    private static double mean(Salon salon, int visitsSeen) {
        return salon.visits().subList(0, visitsSeen).stream()
                .mapToInt(PastUse::usedMilligrams)
                .average()
                .orElse(BASE);
    }

    /** Share of zones short and grams left over per zone when a multiple of the mean of all visits seen is planned. */
    static double[] ofMean(List<Salon> salons, int visitsSeen, double times) {
        double share = 0;
        double left = 0;
        for (Salon salon : salons) {
            double planned = times * mean(salon, visitsSeen);
            share += salon.probabilityShort(planned) / salons.size();
            left += salon.leftOverGrams(planned) / salons.size();
        }
        return new double[] {share, left};
    }

    /** The multiple of the mean at which as many zones run short as with the learned allowances. */
    static double timesMeanWithShare(List<Salon> salons, int visitsSeen, double shareShort) {
        double low = 0.2;
        double high = 5;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (ofMean(salons, visitsSeen, middle)[0] > shareShort) low = middle;
            else high = middle;
        }
        return high;
    }

    /** Prints calibration and grams saved for 2,000 salons. */
    public static void main(String[] arguments) {
        List<Salon> salons = salons(2000, 20, 7);
        for (int visits : new int[] {5, 20}) {
            double[] mean = ofMean(salons, visits, 1);
            System.out.printf(
                    "planning the mean of %2d visits runs short %5.2f %% and leaves %5.2f g per zone%n",
                    visits, 100 * mean[0], mean[1]);
        }
        for (double share : new double[] {0.3, 0.5, 0.7})
            for (int visits : new int[] {5, 20})
                System.out.printf(
                        "clients make %2.0f %% of the spread, set 20.0 %%: after %2d own visits %5.2f %%%n",
                        100 * share,
                        visits,
                        100
                                * SimulatedClients.shareShort(
                                        600, visits, share, new AllowanceSettings(800, 1, 3, 200, 500, 0), 9));
        for (int permille : new int[] {700, 800, 900})
            for (int visits : new int[] {0, 5, 10, 20}) {
                AllowanceSettings settings = new AllowanceSettings(permille, 1, 3, 200, 500, 0);
                double share = shareShort(salons, visits, settings);
                double fixed = fixedAmountWithShare(salons, share);
                double[] saved = savedGrams(salons, fixed, visits, settings);
                System.out.printf(
                        "set to run short %4.1f %%, after %2d visits %5.2f %%; a fixed %5.1f g runs short as often and"
                                + " leaves %5.2f +- %4.2f g more per zone%n",
                        100 - permille / 10.0, visits, 100 * share, fixed / 1000, saved[0], saved[1]);
                if (visits == 0) continue;
                double times = timesMeanWithShare(salons, visits, share);
                double[] against = savedAgainstMean(salons, times, visits, settings);
                System.out.printf(
                        "    the mean of those visits times %4.2f runs short as often and leaves %5.2f +- %4.2f g more"
                                + " per zone; short twice as often as set: learned %4.1f %%, fixed %4.1f %%, mean %4.1f %%"
                                + " of salons%n",
                        times,
                        against[0],
                        against[1],
                        farOff(
                                salons,
                                salon -> salon.allowance(visits, settings).plannedMilligrams(),
                                1 - permille / 1000.0),
                        farOff(salons, salon -> fixed, 1 - permille / 1000.0),
                        farOff(salons, salon -> times * mean(salon, visits), 1 - permille / 1000.0));
            }
    }
}
