/**
 * The prep sheet of a plan, as plain text of at most 80 columns and as an HTML page for a printer; the report of a played
 * day; checks of a played day.
 */
@NullMarked
package stirtide.demo.print;

import org.jspecify.annotations.NullMarked;
