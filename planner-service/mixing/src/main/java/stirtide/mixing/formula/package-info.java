/** What to weigh: pairs of weights that stay inside the ratio window on a real scale, and blends of developers. Pure. */
@NullMarked
package stirtide.mixing.formula;

import org.jspecify.annotations.NullMarked;
