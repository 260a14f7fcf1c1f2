/** How weights, ratios, strengths and times are written on the screen. */
@NullMarked
package stirtide.bar.text;

import org.jspecify.annotations.NullMarked;
