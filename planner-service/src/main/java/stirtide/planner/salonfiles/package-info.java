/**
 * Reads the files a salon supplies for a day: {@code salon.json}, {@code developers.json}, {@code directions/*.json},
 * {@code menu.json} and the bookings. A folder is read whole or refused whole; a refusal names file, place, value and
 * what would be accepted. What the files look like stands in {@code docs/files.md}.
 */
@NullMarked
package stirtide.planner.salonfiles;

import org.jspecify.annotations.NullMarked;
