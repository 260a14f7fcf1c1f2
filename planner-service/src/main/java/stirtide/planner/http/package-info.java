/**
 * The HTTP interfaces: routes built from the contract, problem documents for every refusal, live streams, limits and
 * authentication; and the administration server on a local socket. It knows the days only through {@link
 * stirtide.planner.http.DayOperations}.
 */
@NullMarked
package stirtide.planner.http;

import org.jspecify.annotations.NullMarked;
