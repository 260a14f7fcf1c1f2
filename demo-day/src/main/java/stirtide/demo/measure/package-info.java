/** Figures measured on the demo day. */
@NullMarked
package stirtide.demo.measure;

import org.jspecify.annotations.NullMarked;
