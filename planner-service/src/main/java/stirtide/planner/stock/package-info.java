/** What a day needs against what is on the shelf. Pure. */
@NullMarked
package stirtide.planner.stock;

import org.jspecify.annotations.NullMarked;
