@NullMarked
package stirtide.planner.day.bowl;

import org.jspecify.annotations.NullMarked;
