/**
 * One mix for two bowls, until it is divided by weight.
 *
 * <p>Read {@code BatchRules}, {@code BatchEvents}, {@code BatchSplit}.
 */
@NullMarked
package stirtide.planner.day.batch;

import org.jspecify.annotations.NullMarked;
