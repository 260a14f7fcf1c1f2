/** The text of weights, ratios and strengths, the same in the service, in the terminal and on paper. */
@NullMarked
package stirtide.mixing.text;

import org.jspecify.annotations.NullMarked;
