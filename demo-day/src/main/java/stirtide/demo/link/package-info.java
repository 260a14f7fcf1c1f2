/** The demo's way to the service: plain HTTP, as any other program would use it. */
@NullMarked
package stirtide.demo.link;

import org.jspecify.annotations.NullMarked;
