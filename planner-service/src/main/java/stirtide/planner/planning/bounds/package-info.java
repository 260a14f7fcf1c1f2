/** Says how good a plan is at least, and nothing that the separate checker does not confirm. */
@NullMarked
package stirtide.planner.planning.bounds;

import org.jspecify.annotations.NullMarked;
