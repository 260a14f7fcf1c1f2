package stirtide.bar.model;

import java.util.function.Consumer;
import java.util.function.Predicate;
import stirtide.bar.canvas.Pane;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;

/**
 * What is drawn over a view.
 *
 * @param context which keys work in it
 * @param title heading
 * @param columns columns it wants inside its frame
 * @param rows rows it wants inside its frame
 * @param offers whether an action does something now; the footer leaves out what does not
 * @param painter draws the inside
 */
public record Overlay(
        KeyContext context, String title, int columns, int rows, Predicate<KeyAction> offers, Consumer<Pane> painter) {}
