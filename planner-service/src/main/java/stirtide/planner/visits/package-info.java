/**
 * What was mixed for a client before: whether it can be mixed again, and two visits side by side. Pure.
 *
 * <p>Read {@code LastVisit}, then {@code RepeatFormulaCheck} and {@code VisitComparison}.
 */
@NullMarked
package stirtide.planner.visits;

import org.jspecify.annotations.NullMarked;
