/**
 * What all kinds of files have in common while they are read: text within bounds, problems with their places, local times,
 * and bookings before the day is known.
 */
@NullMarked
package stirtide.planner.salonfiles.source;

import org.jspecify.annotations.NullMarked;
