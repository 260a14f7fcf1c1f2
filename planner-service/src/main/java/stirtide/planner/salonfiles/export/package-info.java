@NullMarked
package stirtide.planner.salonfiles.export;

import org.jspecify.annotations.NullMarked;
