/**
 * The terminal of the color bar. It knows the contract of events-schema and nothing of the service behind it.
 *
 * <p>Reading order: {@code Main} and {@code Options}, {@code BarApp} with its loop, then {@code desk.Desk} (what a key
 * does), {@code scene.Scene} (what is drawn from), {@code view.BarView} (how), {@code link.ServiceLink} (the way to the
 * service) and {@code terminal.BarTerminal} (the way to the terminal).
 */
@NullMarked
package stirtide.bar;

import org.jspecify.annotations.NullMarked;
