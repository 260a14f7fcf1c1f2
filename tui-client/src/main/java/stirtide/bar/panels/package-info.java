/** Panels over the bar view: weigh-in, bin, services, walk-in, questions. Each is a small state machine that answers keys. */
@NullMarked
package stirtide.bar.panels;

import org.jspecify.annotations.NullMarked;
