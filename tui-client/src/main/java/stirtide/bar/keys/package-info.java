/** Keys, what they do, and the one table that feeds the handler, the footer, the help, the tests and the handbook. */
@NullMarked
package stirtide.bar.keys;

import org.jspecify.annotations.NullMarked;
