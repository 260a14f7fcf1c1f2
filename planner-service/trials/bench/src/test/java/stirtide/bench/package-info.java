/** Commands that measure the planner. Never part of the product or of a test run. */
@NullMarked
package stirtide.bench;

import org.jspecify.annotations.NullMarked;
