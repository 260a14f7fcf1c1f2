@NullMarked
package stirtide.events.formula;

import org.jspecify.annotations.NullMarked;
