/**
 * Reads the files a salon supplies for a day, and checks a changed setup against the same rules. A folder is read whole or
 * refused whole; a refusal names file, place, value and what would be accepted. {@link
 * stirtide.planner.salonfiles.SalonFolder} reads, {@link stirtide.planner.salonfiles.SetupCheck} checks. The form of the
 * files is described in {@code docs/files.md}.
 */
@NullMarked
package stirtide.planner.salonfiles;

import org.jspecify.annotations.NullMarked;
