/**
 * Solves the stagger problem: how many bowls feed each run, when each is mixed and by whom, with a proof of how good the
 * plan is. Pure: minutes are integers; random numbers and the count of rounds are passed in.
 */
@NullMarked
package stirtide.planner.planning.stagger;

import org.jspecify.annotations.NullMarked;
