/**
 * What test swatches and pH strips of a salon show, and how much they can show. Pure.
 *
 * <p>Read {@code SwatchLog}, {@code StripReading}, {@code Alkalinity}.
 */
@NullMarked
package stirtide.planner.swatch;

import org.jspecify.annotations.NullMarked;
