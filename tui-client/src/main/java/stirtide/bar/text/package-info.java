/** How weights, ratios, strengths, times, bowls and batches are written on the screen. */
@NullMarked
package stirtide.bar.text;

import org.jspecify.annotations.NullMarked;
