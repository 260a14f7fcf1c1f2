/**
 * Answers what-if questions: services moved, a client without a booking, one more assistant. Pure; draws plans and changes
 * nothing.
 */
@NullMarked
package stirtide.planner.planning.whatif;

import org.jspecify.annotations.NullMarked;
