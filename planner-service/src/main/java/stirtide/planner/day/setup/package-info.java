@NullMarked
package stirtide.planner.day.setup;

import org.jspecify.annotations.NullMarked;
