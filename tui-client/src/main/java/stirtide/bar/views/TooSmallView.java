package stirtide.bar.views;

import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.UiState;
import stirtide.bar.text.TimeText;
import stirtide.events.view.DayView;

/** What is shown in a terminal too small for the bar: the size it needs and the next bowl. */
final class TooSmallView {
    private TooSmallView() {}

    static void draw(Pane pane, UiState scene, String leastSize) {
        String needed = leastSize + " needed, now " + pane.canvas().width() + "x"
                + pane.canvas().height();
        pane.put(0, 0, needed, Style.STRONG);
        Optional<DayView.QueuedBowl> next =
                scene.view().flatMap(view -> view.queue().stream().findFirst());
        next.ifPresent(bowl -> pane.put(
                0,
                1,
                "next: bowl " + bowl.bowl().bowl() + " in "
                        + TimeText.left(bowl.bowl().mixStart(), scene.now()),
                Style.TEXT));
        pane.put(0, 2, scene.panel().isPresent() ? "the entry is kept" : "keys wait", Style.TEXT);
    }
}
