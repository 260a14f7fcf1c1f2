/** The real terminal: a frame buffer with one write a frame, size by stty, clean leaving, key patterns, colors. */
@NullMarked
package stirtide.bar.terminal;

import org.jspecify.annotations.NullMarked;
