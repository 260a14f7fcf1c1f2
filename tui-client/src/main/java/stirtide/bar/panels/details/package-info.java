/** Texts to read: one bowl, reasons, grams and costs, two plans compared. */
@NullMarked
package stirtide.bar.panels.details;

import org.jspecify.annotations.NullMarked;
