package stirtide.mixing.strength;

import stirtide.events.setup.Directions.TechniqueRule;

/** What the law permits on hair, whatever the directions say. */
public final class LegalLimits {
    /**
     * Highest hydrogen peroxide on hair, ready for use, in hundredths of a per cent: Regulation (EC) No 1223/2009,
     * Annex III, entry 12 (a), as replaced by Regulation (EU) 2019/831: 12 % (40 volumes), present or released.
     */
    public static final int ON_HAIR_HUNDREDTHS = 1200;

    private LegalLimits() {}

    /** Strongest developer for a technique, in hundredths of a per cent: that of the directions, never above the law's. */
    public static int ceilingHundredths(TechniqueRule rule) {
        return Math.min(rule.highestStrengthHundredths(), ON_HAIR_HUNDREDTHS);
    }
}
