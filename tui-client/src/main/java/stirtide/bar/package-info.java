/**
 * The terminal of the color bar. It knows the contract of events-schema and nothing of the service behind it.
 *
 * <p>Reading order: {@code BarMain} and {@code cli.OptionsReader}, {@code TerminalApp} with its loop, then
 * {@code controller.BarController} (what a key does), {@code model.UiState} (what is drawn from), {@code views.ScreenView}
 * (how), {@code link.ServiceLink} (the connection to the service) and {@code terminal.BarTerminal} (the terminal itself).
 */
@NullMarked
package stirtide.bar;

import org.jspecify.annotations.NullMarked;
