/**
 * Opening a day with its bookings; booking, moving and cancelling services.
 *
 * <p>Read {@code BookingRules}, {@code BookingEvents}; {@code FormulaRun} says which zones of a
 * menu entry share a formula.
 */
@NullMarked
package stirtide.planner.day.booking;

import org.jspecify.annotations.NullMarked;
