@NullMarked
package stirtide.planner.day.booking;

import org.jspecify.annotations.NullMarked;
