/** The day as a terminal shows it, worked out from its state. Pure; reads {@link stirtide.planner.day.Day}, changes nothing. */
@NullMarked
package stirtide.planner.views;

import org.jspecify.annotations.NullMarked;
