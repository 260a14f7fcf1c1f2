/** What was mixed for a client before: whether it can be mixed again, and two visits side by side. Pure. */
@NullMarked
package stirtide.planner.visits;

import org.jspecify.annotations.NullMarked;
