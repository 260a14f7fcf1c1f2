/**
 * What the planner is asked: all that is left to do on a day, as of its newest event.
 *
 * <p>Read {@code PlanQuestions}, {@code ServiceTasks}, {@code RunNeeds}, {@code LiveSupplies}.
 */
@NullMarked
package stirtide.planner.day.question;

import org.jspecify.annotations.NullMarked;
