/** placeholder */
@NullMarked
package stirtide.demo;

import org.jspecify.annotations.NullMarked;
