/**
 * The HTTP edge: routes built from the contract, problem documents for every refusal, and live feeds. It knows the days
 * only through {@link stirtide.planner.http.DayDesk}.
 */
@NullMarked
package stirtide.planner.http;

import org.jspecify.annotations.NullMarked;
