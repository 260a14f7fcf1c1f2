/**
 * The state of a day and its two functions: {@code decide(day, command, facts)} answers with events or a refusal,
 * {@code evolve(day, event)} gives the next state. Pure.
 */
@NullMarked
package stirtide.planner.day;

import org.jspecify.annotations.NullMarked;
