@NullMarked
package stirtide.mixing.text;

import org.jspecify.annotations.NullMarked;
