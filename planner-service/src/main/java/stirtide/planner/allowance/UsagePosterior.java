package stirtide.planner.allowance;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stirtide.events.setup.UseHistory.PastUse;

/**
 * What earlier visits teach about ln(used / expected by the menu): first all visits of the zone, then the client's own.
 *
 * <p>A visit beyond the middle 99.9 % of what the visits before it let expect is set aside, so one odd bowl does not
 * spoil the rest. If the next visit is beyond on the same side, both are taken: that is a new habit, not a slip.
 */
final class UsagePosterior {
    private static final double OUTLIER_TAIL = 0.0005;
    /** Repeat visits the set share is worth against what is seen; a choice of this tool, no source. */
    private static final double SHARE_WORTH = 5;
    /** Clients always differ a little: least part of the spread between them. */
    private static final double LEAST_BETWEEN = 0.05;

    private final AllowanceSettings settings;
    private final ZoneAsked asked;
    private final List<PastUse> taken = new ArrayList<>();
    private int setAside;

    UsagePosterior(List<PastUse> history, ZoneAsked asked, AllowanceSettings settings) {
        this.settings = settings;
        this.asked = asked;
        take(history.stream()
                .filter(used -> !used.spilled() && used.on().isBefore(asked.on()))
                .filter(used ->
                        asked.resetOn().map(reset -> !used.on().isBefore(reset)).orElse(true))
                .sorted(Comparator.comparing(PastUse::on)
                        .thenComparing(PastUse::clientRef)
                        .thenComparing(PastUse::usedMilligrams))
                .toList());
    }

    List<PastUse> taken() {
        return List.copyOf(taken);
    }

    int setAside() {
        return setAside;
    }

    List<PastUse> ofClient() {
        return asked.clientRef().isEmpty()
                ? List.of()
                : taken.stream()
                        .filter(used -> used.clientRef().equals(asked.clientRef()))
                        .toList();
    }

    /** Knowledge of the zone over all clients. */
    NormalInverseGamma ofZone() {
        return prior().updated(sample(taken));
    }

    /**
     * Knowledge for the client asked about. The spread between visits of one client is learned from all clients who came
     * more than once, starting from the share that is set; the zone's mean counts as many visits of the client as that
     * spread goes into the spread between clients.
     */
    NormalInverseGamma forClient() {
        NormalInverseGamma zone = ofZone();
        WeightedSample own = sample(ofClient());
        double share = settings.clientSharePermille() / 1000.0;
        if (own.weight() == 0 || share == 0) return zone;
        WeightedSample repeats = withinClients();
        double freedom = SHARE_WORTH + repeats.weight();
        double within = ((1 - share) * zone.variance() * SHARE_WORTH + repeats.squares()) / freedom;
        double between = Math.max(zone.variance() - within, LEAST_BETWEEN * zone.variance());
        double worth = within / between;
        double mean = (worth * zone.mean() + own.weight() * own.mean()) / (worth + own.weight());
        return new NormalInverseGamma(mean, worth + own.weight(), Math.min(freedom, zone.freedom()), within);
    }

    /** Squared distances of visits from their client's mean, and the degrees of freedom they have. */
    private WeightedSample withinClients() {
        Map<String, List<PastUse>> byClient = new TreeMap<>();
        for (PastUse used : taken)
            if (!used.clientRef().isEmpty())
                byClient.computeIfAbsent(used.clientRef(), client -> new ArrayList<>())
                        .add(used);
        double freedom = 0;
        double squares = 0;
        for (List<PastUse> visits : byClient.values()) {
            if (visits.size() < 2) continue;
            WeightedSample sample = sample(visits);
            freedom += sample.weight() * (visits.size() - 1) / visits.size();
            squares += sample.squares();
        }
        return new WeightedSample(freedom, 0, squares);
    }

    private NormalInverseGamma prior() {
        double spread = settings.priorSpreadPermille() / 1000.0;
        return new NormalInverseGamma(0, settings.priorVisits(), settings.priorFreedom(), spread * spread);
    }

    private void take(List<PastUse> ordered) {
        NormalInverseGamma known = prior();
        PastUse waiting = null;
        for (PastUse used : ordered) {
            int side = sideOut(known, used);
            if (side != 0 && (waiting == null || sideOut(known, waiting) != side)) {
                if (waiting != null) setAside++;
                waiting = used;
                continue;
            }
            if (waiting != null && side != 0) {
                known = taking(known, waiting);
                known = taking(known, used);
            } else {
                if (waiting != null) setAside++;
                known = taking(known, used);
            }
            waiting = null;
        }
        if (waiting != null) setAside++;
    }

    private NormalInverseGamma taking(NormalInverseGamma known, PastUse used) {
        taken.add(used);
        return known.updated(WeightedSample.of(lnRatio(used)));
    }

    private static int sideOut(NormalInverseGamma known, PastUse used) {
        double above = known.probabilityAbove(lnRatio(used));
        return above < OUTLIER_TAIL ? 1 : above > 1 - OUTLIER_TAIL ? -1 : 0;
    }

    private WeightedSample sample(List<PastUse> visits) {
        double[] values = new double[visits.size()];
        double[] weights = new double[visits.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = lnRatio(visits.get(i));
            weights[i] = weightOf(visits.get(i));
        }
        return values.length == 0 ? new WeightedSample(0, 0, 0) : WeightedSample.of(values, weights);
    }

    /** ln of used over what the menu expected. */
    private static double lnRatio(PastUse used) {
        return Math.log(used.usedMilligrams()
                / ZoneAsked.expectedMilligrams(used.baseMilligrams(), used.lengthPermille(), used.densityPermille()));
    }

    private double weightOf(PastUse used) {
        if (settings.halfLifeDays() == 0) return 1;
        double days = ChronoUnit.DAYS.between(used.on(), asked.on());
        return Math.pow(0.5, days / settings.halfLifeDays());
    }
}
