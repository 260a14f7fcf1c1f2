@NullMarked
package stirtide.planner.day.batch;

import org.jspecify.annotations.NullMarked;
