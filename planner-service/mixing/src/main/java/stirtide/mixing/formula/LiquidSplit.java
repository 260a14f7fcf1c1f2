package stirtide.mixing.formula;

import java.util.List;
import java.util.Optional;
import stirtide.mixing.strength.Alligation;
import stirtide.mixing.strength.Liquid;
import stirtide.mixing.weighing.ScaleErrors;
import stirtide.mixing.weighing.WorstCaseCheck;

/**
 * Ways to split a weight of developer between liquids. One liquid has one way. Two are split by alligation by weight,
 * stronger : weaker = (wanted - weaker) : (stronger - wanted), to the weighable split nearest to it that holds in the
 * worst case. With three, the liquid nearest to the wanted strength gives as much as it can in sixteenths of its
 * greatest share, and the other two are split as above; such an answer always holds, but a slightly smaller mix may
 * exist.
 */
final class LiquidSplit {
    private final WorstCaseCheck check;
    private final List<Liquid> liquids;
    private final int wanted;

    /** @param liquids one, or two from strong to weak, or three: nearest to the wanted strength, then strong, then weak */
    LiquidSplit(WorstCaseCheck check, List<Liquid> liquids, int wantedStrengthHundredths) {
        this.check = check;
        this.liquids = liquids;
        this.wanted = wantedStrengthHundredths;
    }

    /** Smallest weight of developer worth trying, in milligrams. */
    long leastDeveloper() {
        return Math.max(check.leastBlendMilligrams(liquids), (long) liquids.size() * check.leastPartMilligrams());
    }

    /**
     * Most developer the counts on the shelf allow, in milligrams: everything on one side of the strengths accepted, and
     * as much of the other side as that can carry.
     */
    long mostDeveloper() {
        return Math.min(mostAgainst(check.lowestStrength(), 1), mostAgainst(check.highestStrength(), -1));
    }

    private long mostAgainst(int limit, int sign) {
        long carriers = 0;
        long carried = 0;
        long surplus = 0;
        long nearest = Long.MAX_VALUE;
        for (Liquid liquid : liquids) {
            long above = (long) sign * (liquid.strengthHundredths() - limit);
            if (above >= 0) {
                carriers += liquid.mostMilligrams();
                surplus += above * liquid.mostMilligrams();
            } else {
                carried += liquid.mostMilligrams();
                nearest = Math.min(nearest, -above);
            }
        }
        return carriers + Math.min(carried, surplus / nearest);
    }

    /** Smallest error that this much developer or more can have, however it is split, in half milligrams. */
    long leastError(long lightener, long developer) {
        ScaleErrors errors = check.errors();
        if (check.runningTotal())
            return errors.leastErrorFrom(lightener) + errors.leastErrorFrom(lightener + developer);
        if (liquids.size() == 1) return errors.leastErrorFrom(developer);
        if (liquids.size() > 2) return liquids.size() * errors.leastErrorHalfMilligrams();
        long strong = liquids.get(0).strengthHundredths();
        long weak = liquids.get(1).strengthHundredths();
        return errors.leastErrorFrom(developer * (check.lowestStrength() - weak) / (strong - weak))
                + errors.leastErrorFrom(developer * (strong - check.highestStrength()) / (strong - weak));
    }

    /** Weights of the liquids, in their order, that hold with this weight of lightener and sum to the developer. */
    Optional<int[]> of(int lightener, long developer) {
        return switch (liquids.size()) {
            case 1 -> checked(lightener, (int) developer);
            case 2 -> two(lightener, developer, 0, new int[2]);
            default -> three(lightener, developer);
        };
    }

    private Optional<int[]> checked(int lightener, int... parts) {
        return check.holds(lightener, parts, liquids) ? Optional.of(parts) : Optional.empty();
    }

    private Optional<int[]> three(int lightener, long developer) {
        int step = check.errors().stepMilligrams();
        long share = Math.min(liquids.get(0).mostMilligrams(), developer - 2L * check.leastPartMilligrams());
        for (int sixteenths = 16; sixteenths > 0; sixteenths--) {
            long part = share * sixteenths / 16 / step * step;
            if (part < check.leastPartMilligrams()) continue;
            Optional<int[]> found = two(lightener, developer - part, 1, new int[] {(int) part, 0, 0});
            if (found.isPresent()) return found;
        }
        return Optional.empty();
    }

    /** Splits {@code rest} between the last two liquids; {@code parts} holds what stands before them. */
    private Optional<int[]> two(int lightener, long rest, int first, int[] parts) {
        int step = check.errors().stepMilligrams();
        Liquid strong = liquids.get(first);
        Liquid weak = liquids.get(first + 1);
        long before = first == 0
                ? 0
                : (long) parts[0] * (liquids.get(0).strengthHundredths() - wanted); // excess the third part brings
        long gap = strong.strengthHundredths() - weak.strengthHundredths();
        long ideal =
                Alligation.strongOf(rest, before, strong.strengthHundredths(), weak.strengthHundredths(), wanted, step);
        long reach = slack(rest + (first == 0 ? 0 : parts[0]), gap);
        long least = Math.max(ideal - reach, check.leastPartMilligrams());
        long most =
                Math.min(Math.min(ideal + step + reach, strong.mostMilligrams()), rest - check.leastPartMilligrams());
        least = Math.max(least, roundUp(rest - weak.mostMilligrams(), step));
        if (least > most) return Optional.empty();
        for (long away = 0; away <= Math.max(most - ideal, ideal - least); away += step) {
            for (long part : new long[] {ideal - away, ideal + step + away}) {
                if (part < least || part > most) continue;
                parts[first] = (int) part;
                parts[first + 1] = (int) (rest - part);
                if (mayHold(lightener, parts) && check.holds(lightener, parts, liquids))
                    return Optional.of(parts.clone());
            }
        }
        return Optional.empty();
    }

    /** Farthest a split may be from the ideal one before the blend itself is outside the strengths accepted. */
    private long slack(long developer, long gap) {
        long span = Math.max(check.highestStrength() - wanted, wanted - check.lowestStrength());
        return developer * span / gap + check.errors().stepMilligrams();
    }

    /** A quick look at the ratio, so that a split that fails on it costs little. */
    private boolean mayHold(int lightener, int[] parts) {
        if (check.runningTotal()) return true;
        long developer = 0;
        long error = 0;
        for (int part : parts) {
            developer += part;
            error += check.errors().errorHalfMilligrams(part);
        }
        return check.ratioHolds(lightener, developer, error);
    }

    private static long roundUp(long value, int step) {
        return -Math.floorDiv(-value, step) * step;
    }
}
