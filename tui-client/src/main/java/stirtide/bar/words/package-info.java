/** How weights, ratios, strengths and times are written on the screen. */
@NullMarked
package stirtide.bar.words;

import org.jspecify.annotations.NullMarked;
