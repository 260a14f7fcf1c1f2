/** Checks plans and proofs of the stagger problem from the problem alone; shares no code with the search that makes them. */
@NullMarked
package stirtide.planner.check.stagger;

import org.jspecify.annotations.NullMarked;
