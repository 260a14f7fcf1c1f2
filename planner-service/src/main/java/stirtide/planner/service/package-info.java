/**
 * The running service: it keeps each day as the replay of its stream, lets the clock bring about what falls due, has
 * plans drawn beside the work, and starts and stops everything in order.
 */
@NullMarked
package stirtide.planner.service;

import org.jspecify.annotations.NullMarked;
