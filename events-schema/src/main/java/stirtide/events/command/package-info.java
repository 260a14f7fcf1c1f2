/** What people at the salon may ask for: one sealed family of commands in the imperative. */
@NullMarked
package stirtide.events.command;

import org.jspecify.annotations.NullMarked;
