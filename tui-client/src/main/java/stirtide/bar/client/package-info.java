/**
 * HTTP client of a planner service: requests about the service and about one day, bearer tokens, and the live views as
 * server-sent events. It depends on the contract only; the terminal and the demo both use it. Start with ServiceClient and
 * DayClient.
 */
@NullMarked
package stirtide.bar.client;

import org.jspecify.annotations.NullMarked;
