/**
 * What a picture is drawn from: the state of the terminal as immutable values, and what panels ask the controller to
 * do. No I/O, no clock. Start with UiState.
 */
@NullMarked
package stirtide.bar.model;

import org.jspecify.annotations.NullMarked;
