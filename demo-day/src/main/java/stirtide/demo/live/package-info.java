/** The service on a temporary folder, the terminal on it, and the day played in real or in no time. */
@NullMarked
package stirtide.demo.live;

import org.jspecify.annotations.NullMarked;
