@NullMarked
package stirtide.planner.salonfiles.source;

import org.jspecify.annotations.NullMarked;
