/** The way to the service: live views in, commands out, a queue on disk while the way is cut. */
@NullMarked
package stirtide.bar.link;

import org.jspecify.annotations.NullMarked;
