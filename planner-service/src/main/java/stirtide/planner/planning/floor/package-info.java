/**
 * Plans a salon day as it is worked: bowls, the assistants who mix and carry them, stylists with one pair of hands, chairs, basins and rinses. Pure: minutes are whole
 * numbers, random numbers and the count of rounds are passed in.
 */
@NullMarked
package stirtide.planner.planning.floor;

import org.jspecify.annotations.NullMarked;
