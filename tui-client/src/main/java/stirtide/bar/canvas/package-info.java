/** The picture before it meets a terminal: cells with a character and a style, block digits, glyph sets. Start with Canvas, then Pane. */
@NullMarked
package stirtide.bar.canvas;

import org.jspecify.annotations.NullMarked;
