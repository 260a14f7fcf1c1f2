@NullMarked
package stirtide.planner.day.allowance;

import org.jspecify.annotations.NullMarked;
