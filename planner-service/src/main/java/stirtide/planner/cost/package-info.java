/**
 * What mixes cost and how often an allowance should be enough. Money is exact decimals in one currency. Pure.
 *
 * <p>Read {@code Money}, {@code ProductPrices}, {@code CriticalFraction}.
 */
@NullMarked
package stirtide.planner.cost;

import org.jspecify.annotations.NullMarked;
