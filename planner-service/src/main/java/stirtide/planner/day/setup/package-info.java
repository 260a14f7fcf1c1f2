/**
 * What is in force on a day: what a setup must hold, how it changes while the day is open, and who is on duty.
 *
 * <p>Read {@code SetupRules} with the rules it names, then {@code SetupChangeRules} and {@code SetupEvents}.
 */
@NullMarked
package stirtide.planner.day.setup;

import org.jspecify.annotations.NullMarked;
