package stirtide.events.formula;

/**
 * One liquid that goes into a bowl: a developer from the shelf, or water.
 *
 * @param developerId id of the developer, or {@code "water"}
 * @param milligrams weight, 0 or more
 */
public record DeveloperPart(String developerId, int milligrams) {
    /** Id that stands for plain water. */
    public static final String WATER = "water";
}
