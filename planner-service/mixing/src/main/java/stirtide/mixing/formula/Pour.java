package stirtide.mixing.formula;

/**
 * Something really poured into a bowl, as the scale showed it.
 *
 * @param partId lightener id, developer id, or that of water
 * @param milligrams what was added by this pour, more than 0
 */
public record Pour(String partId, int milligrams) {}
