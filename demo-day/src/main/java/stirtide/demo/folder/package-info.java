/** Plans the day of a folder of files without a service, for {@code demo-day/plan}. */
@NullMarked
package stirtide.demo.folder;

import org.jspecify.annotations.NullMarked;
