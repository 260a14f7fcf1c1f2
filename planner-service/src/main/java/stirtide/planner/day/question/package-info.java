@NullMarked
package stirtide.planner.day.question;

import org.jspecify.annotations.NullMarked;
