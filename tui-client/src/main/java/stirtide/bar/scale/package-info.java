/** Reads a scale: reports of the USB scale page, lines of a serial scale, and when a weight counts as stable. Start with ScaleSource. */
@NullMarked
package stirtide.bar.scale;

import org.jspecify.annotations.NullMarked;
