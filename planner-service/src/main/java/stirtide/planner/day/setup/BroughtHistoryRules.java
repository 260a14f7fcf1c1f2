package stirtide.planner.day.setup;

import java.util.Optional;
import java.util.stream.Stream;
import stirtide.events.setup.AllowancePolicy;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.SalonMemory;
import stirtide.events.setup.UseHistory;
import stirtide.mixing.strength.LegalLimits;
import stirtide.planner.allowance.AllowanceSettings;
import stirtide.planner.swatch.StripReading;
import stirtide.planner.swatch.SwatchLog;

/** What a setup may bring along from earlier days, so that whatever reads it later may rely on it. */
final class BroughtHistoryRules {
    private static final int LONGEST_HALF_LIFE = 36_500;

    private BroughtHistoryRules() {}

    static Optional<String> objection(DaySetup setup) {
        return setup.allowances()
                .flatMap(BroughtHistoryRules::policy)
                .or(() -> uses(setup.learned()))
                .or(() -> memory(setup.learned().remembered()));
    }

    private static Optional<String> policy(AllowancePolicy policy) {
        if (outside(policy.fixedPermille())) return fraction();
        if (policy.waitingMinutePrice().filter(price -> price.signum() <= 0).isPresent())
            return Optional.of("The price of a minute of waiting is above 0, or left out.");
        if (policy.shortMilligrams() < 1) return Optional.of("The grams usually missing are more than 0.");
        if (policy.halfLifeDays() < 0 || policy.halfLifeDays() > LONGEST_HALF_LIFE)
            return Optional.of("An earlier visit counts half after 0 (never) to " + LONGEST_HALF_LIFE + " days.");
        return Optional.empty();
    }

    private static boolean outside(Optional<Integer> permille) {
        return permille.filter(times -> times < AllowanceSettings.LOWEST_FRACTION_PERMILLE
                        || times > AllowanceSettings.HIGHEST_FRACTION_PERMILLE)
                .isPresent();
    }

    private static Optional<String> fraction() {
        return Optional.of("Allowances are enough " + AllowanceSettings.LOWEST_FRACTION_PERMILLE + " to "
                + AllowanceSettings.HIGHEST_FRACTION_PERMILLE
                + " times in a thousand; left out, the costs say how often.");
    }

    private static Optional<String> uses(UseHistory history) {
        boolean wrong = history.uses().stream()
                .anyMatch(use -> use.baseMilligrams() < 1
                        || use.lengthPermille() < 1
                        || use.densityPermille() < 1
                        || use.usedMilligrams() < 1);
        return wrong ? Optional.of("Grams and factors of earlier uses are above 0.") : Optional.empty();
    }

    private static Optional<String> memory(SalonMemory memory) {
        if (outside(memory.fractionPermille())) return fraction();
        boolean wrong = memory.visits().stream()
                .flatMap(visit -> visit.zones().stream())
                .anyMatch(BroughtHistoryRules::wrong);
        if (wrong)
            return Optional.of(
                    "Ratio, grams and minutes of an earlier visit are above 0, its minutes at most a day, its strength at most 12 %.");
        return Stream.concat(
                        memory.swatches().stream().map(SwatchLog::objection),
                        memory.strips().stream().map(StripReading::objection))
                .flatMap(Optional::stream)
                .findFirst()
                .map(outside -> "A swatch or strip of an earlier day: " + outside + ".");
    }

    private static boolean wrong(PastVisit.PastZone zone) {
        return zone.ratioThousandths() < 1
                || zone.strengthHundredths() < 0
                || zone.strengthHundredths() > LegalLimits.ON_HAIR_HUNDREDTHS
                || zone.usedMilligrams() < 1
                || zone.mixedMilligrams() < 1
                || !SetupChecks.isMinutes(zone.applyMinutes(), 1)
                || !SetupChecks.isMinutes(zone.processMinutes(), 0)
                || zone.rinsedAfterMinutes().orElse(0) < 0;
    }
}
