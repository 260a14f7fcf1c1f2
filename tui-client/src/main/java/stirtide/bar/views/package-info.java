/** The views drawn from the state of the terminal. Start with ScreenView. */
@NullMarked
package stirtide.bar.views;

import org.jspecify.annotations.NullMarked;
