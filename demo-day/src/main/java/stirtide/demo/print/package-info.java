/** The prep sheet of a plan and the report of a played day, as plain text of at most 80 columns; checks of a played day. */
@NullMarked
package stirtide.demo.print;

import org.jspecify.annotations.NullMarked;
