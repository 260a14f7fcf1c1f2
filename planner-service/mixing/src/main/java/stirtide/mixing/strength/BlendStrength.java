package stirtide.mixing.strength;

import java.util.List;

/** Strength of blends, by weight. */
public final class BlendStrength {
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
}
