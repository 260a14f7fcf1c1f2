/** What can happen on a day: one sealed family of events in the past tense, and the bookings they carry. */
@NullMarked
package stirtide.events.day;

import org.jspecify.annotations.NullMarked;
