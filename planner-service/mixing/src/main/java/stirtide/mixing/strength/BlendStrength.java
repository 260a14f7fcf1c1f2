package stirtide.mixing.strength;

import java.util.List;

/** Strength of blends and of finished mixes, by weight. */
public final class BlendStrength {
    /**
     * Highest hydrogen peroxide on hair, ready for use, in hundredths of a per cent: Regulation (EC) No 1223/2009,
     * Annex III, entry 12 (a), as replaced by Regulation (EU) 2019/831: 12 % (40 volumes), present or released.
     */
    public static final int LEGAL_ON_HAIR_HUNDREDTHS = 1200;

    /**
     * How far a blend may be from the wanted strength in the worst case, in hundredths of a per cent: one volume by the
     * trade's convention. A choice of this tool, no source; a blend never passes a ceiling whatever this is.
     */
    public static final int BLEND_TOLERANCE_HUNDREDTHS = 30;

    private BlendStrength() {}

    /** Strength of liquids together, in hundredths of a per cent by weight, rounded to nearest. */
    public static int blendHundredths(List<Liquid> liquids, int[] parts) {
        long peroxide = 0;
        long weight = 0;
        for (int k = 0; k < parts.length; k++) {
            peroxide += (long) parts[k] * liquids.get(k).strengthHundredths();
            weight += parts[k];
        }
        return (int) ((2 * peroxide + weight) / (2 * weight));
    }

    /**
     * Peroxide in a finished mix, in hundredths of a per cent by weight, rounded up. What the lightener itself releases
     * is not in it.
     *
     * @param strengthHundredths strength of the developer
     * @param ratioThousandths developer per lightener
     */
    public static int inMixHundredths(int strengthHundredths, int ratioThousandths) {
        long whole = 1000L + ratioThousandths;
        return (int) -Math.floorDiv(-(long) strengthHundredths * ratioThousandths, whole);
    }
}
