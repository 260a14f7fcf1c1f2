package stirtide.planner.planning.floor;

/** Costs of bowls in decigrams, besides residue and surplus. */
public final class HandlingCosts {
    /** Stands for no limit, and for what is not possible. */
    public static final int NONE = Integer.MAX_VALUE / 4;

    /** A bowl that begins inside a zone. */
    static final int INSIDE_A_ZONE = 30;

    /** Each minute by which a bowl has less life left than it should. */
    static final int MARGIN_MINUTE = 10;

    private HandlingCosts() {}
}
