/** Checks plans of floor days from the rules alone; shares no code with the engine that draws them. */
@NullMarked
package stirtide.planner.check.floor;

import org.jspecify.annotations.NullMarked;
