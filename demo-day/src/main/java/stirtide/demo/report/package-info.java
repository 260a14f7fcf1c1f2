/** What happened on a played day, as plain text, and the checks that it has to stand. */
@NullMarked
package stirtide.demo.report;

import org.jspecify.annotations.NullMarked;
