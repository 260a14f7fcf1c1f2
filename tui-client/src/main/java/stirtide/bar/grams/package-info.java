/** Over-mixed grams of a day sorted, and limits over days. No I/O, no clock. Start with DayGrams. */
@NullMarked
package stirtide.bar.grams;

import org.jspecify.annotations.NullMarked;
