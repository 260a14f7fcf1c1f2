@NullMarked
package stirtide.planner.day.chair;

import org.jspecify.annotations.NullMarked;
