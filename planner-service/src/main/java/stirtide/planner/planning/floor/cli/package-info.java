/** Reads floor days from JSON files and prints plans as JSON lines. */
@NullMarked
package stirtide.planner.planning.floor.cli;

import org.jspecify.annotations.NullMarked;
