package stirtide.bar.scene;

import java.time.LocalDate;

/**
 * An earlier day in three figures.
 *
 * @param date the day
 * @param mixedMilligrams mixed in bowls that are done
 * @param overMixedMilligrams of those, not applied and not stuck to bowls
 */
public record PastDay(LocalDate date, int mixedMilligrams, int overMixedMilligrams) {}
