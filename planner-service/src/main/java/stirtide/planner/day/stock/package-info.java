@NullMarked
package stirtide.planner.day.stock;

import org.jspecify.annotations.NullMarked;
