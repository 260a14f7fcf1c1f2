/**
 * What the files of a salon must say beyond their schemas, as rules over records: used for files that were read and for
 * a setup that was changed at a terminal. Each rule reports to the path of the field it refuses.
 */
@NullMarked
package stirtide.planner.salonfiles.rules;

import org.jspecify.annotations.NullMarked;
