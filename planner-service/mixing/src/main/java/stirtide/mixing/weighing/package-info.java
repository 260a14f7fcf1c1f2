/** What a scale can show, how far it may err, and whether a mix holds its limits in the worst case. */
@NullMarked
package stirtide.mixing.weighing;

import org.jspecify.annotations.NullMarked;
