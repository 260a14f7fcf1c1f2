@NullMarked
package stirtide.planner.day.state;

import org.jspecify.annotations.NullMarked;
