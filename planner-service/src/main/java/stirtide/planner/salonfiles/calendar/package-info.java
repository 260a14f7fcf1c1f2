/**
 * Reads bookings from a calendar (RFC 5545) as any calendar program exports it: content lines with their numbers, time
 * zones, recurrence, and the fields of a service.
 */
@NullMarked
package stirtide.planner.salonfiles.calendar;

import org.jspecify.annotations.NullMarked;
