/**
 * What is left of the products: counts, receipts, and what the bowls of the day have taken.
 *
 * <p>Read {@code StockRules}, {@code StockEvents}, {@code ShelfStock}.
 */
@NullMarked
package stirtide.planner.day.stock;

import org.jspecify.annotations.NullMarked;
