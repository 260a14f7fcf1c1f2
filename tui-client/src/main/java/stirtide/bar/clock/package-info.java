/** The salon's clock as a terminal follows it between two messages of the service. */
@NullMarked
package stirtide.bar.clock;

import org.jspecify.annotations.NullMarked;
