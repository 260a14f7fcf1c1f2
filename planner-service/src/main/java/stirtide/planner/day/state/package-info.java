/**
 * The state of a day and what all its folders share: decisions, refusals, and the kinds of rules they contribute for
 * commands and events.
 *
 * <p>Read {@code Day}, {@code ServiceState}, {@code BowlState}, then {@code CommandRule} and {@code EventRule}.
 */
@NullMarked
package stirtide.planner.day.state;

import org.jspecify.annotations.NullMarked;
