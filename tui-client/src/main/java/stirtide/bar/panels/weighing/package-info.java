/** Weigh-in, division and disposal of a mix, with the ratio checked against the directions while it is typed. */
@NullMarked
package stirtide.bar.panels.weighing;

import org.jspecify.annotations.NullMarked;
