package stirtide.events.day;

/** Why grams that were mixed did not go on hair. Each over-mixed gram has exactly one cause. */
public enum OverMixCause {
    /** Left in the bowl when the zone was done. */
    LEFT_OVER,
    /** The working life was over before the bowl was used up. */
    PAST_LIFE,
    /** The weights were outside the directions. */
    WRONG_RATIO,
    /** The client left or never came. */
    CLIENT_GONE,
    /** Spilled. */
    SPILLED
}
