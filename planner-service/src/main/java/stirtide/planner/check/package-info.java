/**
 * Judges a plan without knowing how it was drawn: every figure is derived anew from the question. Shares no code with the
 * planner, so that a mistake there cannot hide here.
 */
@NullMarked
package stirtide.planner.check;

import org.jspecify.annotations.NullMarked;
