@NullMarked
package stirtide.planner.salonfiles.calendar;

import org.jspecify.annotations.NullMarked;
