@NullMarked
package stirtide.mixing.weighing;

import org.jspecify.annotations.NullMarked;
