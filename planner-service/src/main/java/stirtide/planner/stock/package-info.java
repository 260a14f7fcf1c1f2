/**
 * Product weights over a day, and what the plan needs against what is on the shelf. Pure: it knows no day.
 *
 * <p>Read {@code ShelfEvent}, {@code ShelfCount}, {@code StockReport}.
 */
@NullMarked
package stirtide.planner.stock;

import org.jspecify.annotations.NullMarked;
