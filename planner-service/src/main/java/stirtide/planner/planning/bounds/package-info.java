/** Lower bounds on bowls and waits of a plan, with their reasons; only bounds that the checker confirms are published. */
@NullMarked
package stirtide.planner.planning.bounds;

import org.jspecify.annotations.NullMarked;
