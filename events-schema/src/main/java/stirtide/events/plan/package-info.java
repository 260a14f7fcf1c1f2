/** The plan of a day as it is drawn, recorded and shown. */
@NullMarked
package stirtide.events.plan;

import org.jspecify.annotations.NullMarked;
