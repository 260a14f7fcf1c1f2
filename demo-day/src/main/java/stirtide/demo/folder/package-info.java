/** From a folder of files to a plan, without a service: what {@code demo-day/plan} does. */
@NullMarked
package stirtide.demo.folder;

import org.jspecify.annotations.NullMarked;
