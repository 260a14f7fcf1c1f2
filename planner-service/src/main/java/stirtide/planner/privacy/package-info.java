/**
 * Who clients are: references sealed with a key of each client, the file of the keys, and its end for one client. An
 * edge: it reads and writes a file and draws random keys.
 */
@NullMarked
package stirtide.planner.privacy;

import org.jspecify.annotations.NullMarked;
