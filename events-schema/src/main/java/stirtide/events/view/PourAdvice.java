package stirtide.events.view;

import java.util.Optional;

/**
 * What to do next with a bowl that is being weighed, from what was poured so far.
 *
 * @param bowl bowl id
 * @param kind what to do
 * @param sentence the same for people, with the true range of the ratio on this scale
 * @param partId what to pour, a developer's id or {@link #LIGHTENER}; empty unless something is to be poured
 * @param milligrams how much to pour, 0 unless something is to be poured; with {@code BIN_AND_RESTART} what is lost
 * @param displayMilligrams what the scale shows when it is enough, 0 unless something is to be poured
 */
public record PourAdvice(
        String bowl, Kind kind, String sentence, Optional<String> partId, int milligrams, int displayMilligrams) {
    /** Stands for the bowl's lightener among the parts. */
    public static final String LIGHTENER = "lightener";

    /** What to do. */
    public enum Kind {
        /** Pour a part that is not in the bowl yet. */
        ADD,
        /** Top up a part that is in the bowl: too much or too little of something was poured. */
        CORRECT,
        /** Nothing more: the bowl is enough and inside the directions. */
        READY,
        /** Nothing helps: bin the bowl and begin another. */
        BIN_AND_RESTART,
        /** The weights cannot be what the scale showed. */
        UNREADABLE
    }
}
