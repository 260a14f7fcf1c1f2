/** A day as files for people and programs outside the terminal. Start with DayPage. */
@NullMarked
package stirtide.bar.report;

import org.jspecify.annotations.NullMarked;
