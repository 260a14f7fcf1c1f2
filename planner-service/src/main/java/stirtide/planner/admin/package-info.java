/**
 * The way from the care command to a running service: a socket in the data folder, open to whoever owns the folder. An
 * edge.
 */
@NullMarked
package stirtide.planner.admin;

import org.jspecify.annotations.NullMarked;
