/** Checks plans and certificates of the stagger problem from the problem alone; shares no code with the search. */
@NullMarked
package stirtide.planner.check.stagger;

import org.jspecify.annotations.NullMarked;
