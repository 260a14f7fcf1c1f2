/** What a terminal needs to show a day, made anew from the events after each change. */
@NullMarked
package stirtide.events.view;

import org.jspecify.annotations.NullMarked;
