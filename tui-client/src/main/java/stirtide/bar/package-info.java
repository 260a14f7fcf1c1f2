/** placeholder */
@NullMarked
package stirtide.bar;

import org.jspecify.annotations.NullMarked;
