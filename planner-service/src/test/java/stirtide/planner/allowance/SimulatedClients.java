package stirtide.planner.allowance;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.statistics.distribution.NormalDistribution;
import stirtide.events.setup.UseHistory.PastUse;

/**
 * Salons with ten clients who differ from each other and come again and again. The true share of the spread that lies
 * between clients is given; the allowance is asked for the first client.
 */
final class SimulatedClients {
    private static final int BASE = 50_000;
    private static final int CLIENTS = 10;
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    private SimulatedClients() {}

    /** Share of visits of the first client that run short after this many own visits, over all salons. */
    static double shareShort(int salons, int ownVisits, double trueShare, AllowanceSettings settings, long seed) {
        Random random = new Random(seed);
        double sum = 0;
        for (int i = 0; i < salons; i++) sum += salon(random, ownVisits, trueShare, settings);
        return sum / salons;
    }

    private static double salon(Random random, int ownVisits, double trueShare, AllowanceSettings settings) {
        double mean = random.nextGaussian() * 0.2;
        double spread = 0.1 + 0.2 * random.nextDouble();
        double within = spread * Math.sqrt(1 - trueShare);
        double[] centers = new double[CLIENTS];
        for (int c = 0; c < CLIENTS; c++) centers[c] = mean + spread * Math.sqrt(trueShare) * random.nextGaussian();
        List<PastUse> visits = new ArrayList<>();
        for (int visit = 0; visit < ownVisits * CLIENTS; visit++) {
            int client = visit % CLIENTS;
            int grams = (int) (BASE * Math.exp(centers[client] + within * random.nextGaussian()));
            visits.add(
                    new PastUse(FIRST.plusDays(visit), "menu", "zone", "c" + client, BASE, 1000, 1000, grams, false));
        }
        ZoneAsked asked = new ZoneAsked(
                "foils", FIRST.plusDays(visits.size()), "c0", BASE, 1000, 1000, Optional.empty(), Optional.empty());
        int planned = Allowances.of(asked, visits, settings).plannedMilligrams();
        return STANDARD.survivalProbability((Math.log((double) planned / BASE) - centers[0]) / within);
    }
}
