/**
 * The grams planned for the zones of a day: learned from earlier visits, pinned by a manager, or by the menu.
 *
 * <p>Read {@code ZoneGrams}, {@code LearnedAllowances}, {@code AllowanceRules}. The statistics are in
 * {@code stirtide.planner.allowance}.
 */
@NullMarked
package stirtide.planner.day.allowance;

import org.jspecify.annotations.NullMarked;
