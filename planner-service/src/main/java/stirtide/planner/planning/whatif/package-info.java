/**
 * What would happen if: services moved, a client without a booking, one more assistant. Pure; asks the planner and changes
 * nothing.
 */
@NullMarked
package stirtide.planner.planning.whatif;

import org.jspecify.annotations.NullMarked;
