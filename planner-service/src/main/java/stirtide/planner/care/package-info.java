/** Looking after a log whose service is stopped: verifying, exporting, moving, backing up. */
@NullMarked
package stirtide.planner.care;

import org.jspecify.annotations.NullMarked;
