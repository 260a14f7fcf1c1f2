package stirtide.planner.planning.search;

import stirtide.events.setup.Directions.TechniqueRule;

/** Invented directions for small days. */
final class PlanRules {
    TechniqueRule foil() {
        return foilFor(60);
    }

    TechniqueRule foilFor(int longestMinutes) {
        return new TechniqueRule("foil", false, 1500, 2500, 1200, longestMinutes);
    }

    TechniqueRule scalpUpTo(int strengthHundredths) {
        return new TechniqueRule("scalp", true, 1500, 2500, strengthHundredths, 50);
    }
}
