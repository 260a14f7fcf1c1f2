@NullMarked
package stirtide.planner.day.history;

import org.jspecify.annotations.NullMarked;
