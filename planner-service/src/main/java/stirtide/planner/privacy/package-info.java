/**
 * Pseudonyms of clients: references sealed with a key of each client, the file of the keys, and the destruction of a key.
 * It reads and writes files and draws random keys.
 */
@NullMarked
package stirtide.planner.privacy;

import org.jspecify.annotations.NullMarked;
