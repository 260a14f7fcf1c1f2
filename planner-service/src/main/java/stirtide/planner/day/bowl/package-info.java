/**
 * One bowl from its begin to its end: what may be mixed, weighed, handed over, used up and binned, and whether the
 * directions permit what was weighed.
 *
 * <p>Read {@code BowlRules}, {@code BowlEvents}, then {@code DirectionsCheck}.
 */
@NullMarked
package stirtide.planner.day.bowl;

import org.jspecify.annotations.NullMarked;
