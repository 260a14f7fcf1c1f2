/** Strength of developers and blends by weight, and the legal limit on hair. */
@NullMarked
package stirtide.mixing.strength;

import org.jspecify.annotations.NullMarked;
