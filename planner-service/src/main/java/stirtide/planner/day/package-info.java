/**
 * The day as a whole: {@code decide(day, command, context)} answers with events or a refusal, {@code evolve(day, event)}
 * gives the next state, {@code due(day, now)} gives the events that time alone brings about. Pure.
 *
 * <p>Read {@code state.Day} first, then {@code Decider} and {@code Evolver}, which dispatch to the rules of the folders
 * below (booking, chair, bowl, batch, setup, stock, allowance, history), then {@code Ticker}, {@code Alarms} and
 * {@code TakeBackRules}.
 */
@NullMarked
package stirtide.planner.day;

import org.jspecify.annotations.NullMarked;
