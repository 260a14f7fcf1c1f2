/** Command that plans day files in the plain model and prints one JSON line each. */
@NullMarked
package stirtide.planner.planning.stagger.cli;

import org.jspecify.annotations.NullMarked;
