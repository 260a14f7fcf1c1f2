/**
 * Writes a setup as the files it could have been read from.
 */
@NullMarked
package stirtide.planner.salonfiles.export;

import org.jspecify.annotations.NullMarked;
