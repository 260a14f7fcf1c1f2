package stirtide.planner.planning.floor;

/**
 * Bowls of one size.
 *
 * @param usableDecigrams what such a bowl holds
 * @param residueDecigrams what stays in it after use
 * @param count how many there are
 */
public record FloorBowlSize(int usableDecigrams, int residueDecigrams, int count) {}
