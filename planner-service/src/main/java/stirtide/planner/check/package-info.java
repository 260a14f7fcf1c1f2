/**
 * Checks a plan independently of how it was made: every figure is derived anew from the question. Shares no code with the
 * planner, so that a mistake there cannot hide here.
 */
@NullMarked
package stirtide.planner.check;

import org.jspecify.annotations.NullMarked;
