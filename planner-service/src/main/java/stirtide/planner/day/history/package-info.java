/**
 * What is recorded of clients and mixes, what a later day takes over from earlier ones, and what is erased of a client.
 *
 * <p>Read {@code ClientHistoryRules}, {@code ClientHistoryEvents}, {@code CarriedHistory}, {@code ClientErasure}.
 */
@NullMarked
package stirtide.planner.day.history;

import org.jspecify.annotations.NullMarked;
