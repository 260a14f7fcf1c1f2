/** Search for the weights of a bowl, and its correction while it is weighed. Pure. */
@NullMarked
package stirtide.mixing.formula;

import org.jspecify.annotations.NullMarked;
