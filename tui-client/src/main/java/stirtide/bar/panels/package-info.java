/** Panels drawn over a view that belong to no one topic: the keys, sign-on, shelving of alarms, search for a bowl. */
@NullMarked
package stirtide.bar.panels;

import org.jspecify.annotations.NullMarked;
