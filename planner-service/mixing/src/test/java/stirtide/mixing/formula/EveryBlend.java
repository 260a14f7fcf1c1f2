package stirtide.mixing.formula;

import java.util.Optional;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.Weighing;
import stirtide.mixing.weighing.Ratios;

/** Tries every triple of lightener, stronger and weaker developer and every corner of the box of scale errors. */
final class EveryBlend {
    private final Scale scale;
    private final EveryWeighing errors;
    private final int[] ratio;
    private final int[] strength;
    private final int strong;
    private final int weak;

    /** @param ratio lowest and highest, in thousandths
     *  @param strength lowest and highest accepted, in hundredths of a per cent */
    EveryBlend(Scale scale, int[] ratio, int[] strength, int strong, int weak) {
        this.scale = scale;
        this.errors = new EveryWeighing(scale, ratio[0], ratio[1]);
        this.ratio = ratio;
        this.strength = strength;
        this.strong = strong;
        this.weak = weak;
    }

    /** Smallest sum of weights, and the best lightener weight for it; empty when there is none. */
    Optional<int[]> smallest(int least, int usable, int wanted) {
        for (int total = least; total <= usable; total++) {
            int[] best = null;
            for (int lightener = 1; lightener < total - 1; lightener++)
                if (anySplit(lightener, total - lightener)
                        && (best == null
                                || Ratios.compareCloseness(
                                                lightener, total - lightener, best[0], total - best[0], wanted)
                                        < 0)) best = new int[] {lightener, total};
            if (best != null) return Optional.of(best);
        }
        return Optional.empty();
    }

    private boolean anySplit(int lightener, int developer) {
        for (int high = 1; high < developer; high++) if (allowed(lightener, high, developer - high)) return true;
        return false;
    }

    boolean allowed(int lightener, int high, int low) {
        boolean running = scale.weighing() == Weighing.RUNNING_TOTAL;
        int[] reading = running
                ? new int[] {lightener, lightener + high, lightener + high + low}
                : new int[] {lightener, high, low};
        for (int corner = 0; corner < 8; corner++) {
            long[] seen = new long[3];
            for (int i = 0; i < 3; i++)
                seen[i] = 2L * reading[i] + ((corner >> i & 1) == 0 ? -1 : 1) * errors.error(reading[i]);
            long a = seen[0];
            long b = running ? seen[1] - seen[0] : seen[1];
            long c = running ? seen[2] - seen[1] : seen[2];
            if (!inside(a, b, c)) return false;
        }
        return true;
    }

    private boolean inside(long lightener, long high, long low) {
        long developer = high + low;
        long peroxide = high * strong + low * weak;
        return lightener > 0
                && 1000 * developer >= ratio[0] * lightener
                && 1000 * developer <= ratio[1] * lightener
                && peroxide >= strength[0] * developer
                && peroxide <= strength[1] * developer;
    }
}
