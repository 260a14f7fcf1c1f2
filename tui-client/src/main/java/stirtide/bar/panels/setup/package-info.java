/** Forms that change the setup in force, the shelf and planned grams, and the records of test mixes. */
@NullMarked
package stirtide.bar.panels.setup;

import org.jspecify.annotations.NullMarked;
