/** What is in force on a day, as rows to look at and forms to change it. */
@NullMarked
package stirtide.bar.panels.setup;

import org.jspecify.annotations.NullMarked;
