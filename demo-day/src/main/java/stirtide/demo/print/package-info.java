/** The prep sheet: a plan as plain text of at most 80 columns, to print and to pin above the color bar. */
@NullMarked
package stirtide.demo.print;

import org.jspecify.annotations.NullMarked;
