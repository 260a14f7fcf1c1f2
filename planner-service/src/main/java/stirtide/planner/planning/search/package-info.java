/**
 * Searches for the plan of a day. A {@link stirtide.planner.planning.search.PlanQuestion} is the whole input; the answer is
 * a {@link stirtide.events.plan.Plan}. Pure: the same question gives the same plan, byte for byte. Times are whole minutes
 * since the start of the day in the salon's zone.
 */
@NullMarked
package stirtide.planner.planning.search;

import org.jspecify.annotations.NullMarked;
