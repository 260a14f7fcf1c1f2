/** The demo day with the service: in the terminal on a running clock, or played step by step and printed. */
@NullMarked
package stirtide.demo.live;

import org.jspecify.annotations.NullMarked;
