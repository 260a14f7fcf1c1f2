/** The day as lines one after the other, for readers of screens and for logs. Start with PlainLines. */
@NullMarked
package stirtide.bar.plain;

import org.jspecify.annotations.NullMarked;
