/** Command lines of the service: parsing, error messages and exit codes in one form for all its programs. */
@NullMarked
package stirtide.planner.cli;

import org.jspecify.annotations.NullMarked;
