package stirtide.events.setup;

/**
 * A size of mixing bowl the bar owns.
 *
 * @param bowlSizeId short id, unique in the salon
 * @param usableMilligrams most that may be mixed in it
 * @param residueMilligrams what stays on bowl and brush and can never be applied
 * @param count how many the bar owns
 */
public record BowlSize(String bowlSizeId, int usableMilligrams, int residueMilligrams, int count) {}
