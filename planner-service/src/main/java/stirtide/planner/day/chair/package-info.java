/**
 * What happens at the chair: services start, zones are applied, sections are rinsed.
 *
 * <p>Read {@code ChairRules}, {@code ChairEvents}, then {@code ServiceProgress}, which works out how far a service is.
 */
@NullMarked
package stirtide.planner.day.chair;

import org.jspecify.annotations.NullMarked;
