@NullMarked
package stirtide.mixing.strength;

import org.jspecify.annotations.NullMarked;
