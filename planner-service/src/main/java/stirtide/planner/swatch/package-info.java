/** What test swatches and pH strips of a salon tell, and how much they can tell. Pure. */
@NullMarked
package stirtide.planner.swatch;

import org.jspecify.annotations.NullMarked;
