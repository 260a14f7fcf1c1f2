/**
 * The day as a terminal shows it, worked out from its state. Pure: it reads {@link stirtide.planner.day.state.Day} and
 * changes nothing.
 *
 * <p>Read {@code DayViews}, which puts the cards together; {@code GramsViews}, {@code SwatchViews} and
 * {@code VisitsViews} make the other pages.
 */
@NullMarked
package stirtide.planner.views;

import org.jspecify.annotations.NullMarked;
