package stirtide.bar.controller;

import java.util.List;
import java.util.Optional;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.FloorSelection;
import stirtide.bar.model.OverMixBars;
import stirtide.bar.model.OverMixSelection;
import stirtide.bar.model.PersonDay;
import stirtide.bar.model.UiState;
import stirtide.bar.text.BatchText;
import stirtide.bar.text.BowlText;
import stirtide.bar.text.WeightText;
import stirtide.events.view.DayView;

/** The picked row as one line of plain text, for other programs. */
final class SelectedRowText {
    private SelectedRowText() {}

    static Optional<String> of(UiState state) {
        return state.view().flatMap(view -> of(view, state));
    }

    private static Optional<String> of(DayView view, UiState state) {
        if (state.pages().page() == KeyContext.FLOOR) {
            FloorSelection floor = state.pages().floor();
            if (floor.people()) return person(view, floor);
            return state.pages().floor().in(view).map(card -> service(card, state));
        }
        if (state.pages().page() == KeyContext.DAY) return bar(view, state);
        return state.picks().onLive()
                ? state.picks().liveIn(view).map(bowl -> live(bowl, state))
                : state.picks().queuedIn(view).map(bowl -> queued(bowl, state));
    }

    private static Optional<String> person(DayView view, FloorSelection floor) {
        if (view.people().isEmpty()) return Optional.empty();
        DayView.PersonCard card = view.people().get(floor.personIn(view));
        return Optional.of(card.name() + ", " + new PersonDay(card).words().replace("  ", ", "));
    }

    private static String service(DayView.ServiceCard card, UiState state) {
        return "service " + card.service() + ", chair " + card.chair() + ", " + card.clientRef() + ", "
                + card.menuName() + ", " + state.minute(card.plannedStart()) + " to "
                + state.minute(card.plannedEnd()) + ", waits " + card.waitMinutes() + " min";
    }

    private static Optional<String> bar(DayView view, UiState state) {
        OverMixSelection pick = state.pages().day();
        List<OverMixBars.Bar> bars = OverMixBars.bars(view, state.pages().past(), pick);
        if (bars.isEmpty()) return Optional.empty();
        OverMixBars.Bar bar = bars.get(Math.min(pick.row(), bars.size() - 1));
        return Optional.of(
                view.date() + ", over-mixed, " + bar.label() + ", " + WeightText.grams(bar.milligrams()) + " g");
    }

    private static String live(DayView.LiveBowl bowl, UiState state) {
        return "bowl " + bowl.bowl() + ", chair " + bowl.chair() + ", " + bowl.clientRef() + ", "
                + String.join(
                        " and ",
                        state.view().map(view -> BowlText.zones(bowl, view)).orElse(bowl.zones())) + ", life ends "
                + state.minute(bowl.lifeEnds());
    }

    private static String queued(DayView.QueuedBowl bowl, UiState state) {
        String mix = bowl.batch()
                .map(batch -> "one mix with bowl "
                        + BatchText.other(batch, bowl.bowl().bowl()) + " or alone, ")
                .orElse("");
        return "bowl " + bowl.bowl().bowl() + ", chair " + bowl.bowl().chair() + ", " + bowl.clientRef() + ", " + mix
                + WeightText.grams(bowl.bowl().formula().lightenerMilligrams()) + " g " + bowl.lightenerName()
                + ", makes " + WeightText.grams(bowl.bowl().formula().totalMilligrams()) + " g, start "
                + state.minute(bowl.bowl().mixStart());
    }
}
