/**
 * Who may do what: tokens and codes kept hashed in a file, the table of rights, and the gate every request passes. An
 * edge: it reads files and the machine's clock, and knows no HTTP.
 */
@NullMarked
package stirtide.planner.access;

import org.jspecify.annotations.NullMarked;
