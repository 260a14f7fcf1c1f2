@NullMarked
package stirtide.planner.salonfiles.json;

import org.jspecify.annotations.NullMarked;
