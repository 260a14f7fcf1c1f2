package stirtide.bar.model;

import java.util.Optional;
import stirtide.events.setup.SetupPiece;

/**
 * A row of what is in force.
 *
 * @param part which part it belongs to
 * @param id id of the piece, empty text for a part's own row
 * @param within place of a technique or zone within its piece, from 0; empty for the piece itself
 * @param text what stands in the row
 */
public record SetupRow(Part part, String id, Optional<Integer> within, String text) {
    /** The parts of a setup, in the order in which a salon is best set up. */
    public enum Part {
        /** The salon as a whole. */
        SALON,
        /** People and their hours. */
        PEOPLE,
        SCALES,
        /** Sizes of bowl. */
        BOWLS,
        DEVELOPERS,
        /** Lighteners and their directions. */
        LIGHTENERS,
        /** Factors of hair. */
        HAIR,
        /** Bookable services. */
        MENU;

        /** What its pieces are called when one is taken out, empty when none can be. */
        public Optional<SetupPiece.Kind> kind() {
            return switch (this) {
                case PEOPLE -> Optional.of(SetupPiece.Kind.PERSON);
                case SCALES -> Optional.of(SetupPiece.Kind.SCALE);
                case BOWLS -> Optional.of(SetupPiece.Kind.BOWL_SIZE);
                case DEVELOPERS -> Optional.of(SetupPiece.Kind.DEVELOPER);
                case LIGHTENERS -> Optional.of(SetupPiece.Kind.LIGHTENER);
                case MENU -> Optional.of(SetupPiece.Kind.MENU_ENTRY);
                case SALON, HAIR -> Optional.empty();
            };
        }
    }

    /** Whether it is the heading of its part. */
    public boolean isHeading() {
        return id.isEmpty();
    }
}
