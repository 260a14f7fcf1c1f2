/**
 * Keys, what they do, and the one table that the key handling, the footer, the help, the tests and the handbook read.
 * Start with KeyTable.
 */
@NullMarked
package stirtide.bar.keys;

import org.jspecify.annotations.NullMarked;
