package stirtide.bar.controller;

import java.util.List;
import java.util.Optional;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.form.ConfirmPanel;
import stirtide.bar.panels.form.FormPanel;
import stirtide.bar.panels.weighing.BinPanel;
import stirtide.bar.panels.weighing.DividePanel;
import stirtide.bar.panels.weighing.WeighPanel;
import stirtide.bar.text.BatchText;
import stirtide.events.command.DayCommand;
import stirtide.events.day.OverMixCause;
import stirtide.events.view.DayView;
import stirtide.events.view.DayView.BatchCard;
import stirtide.events.view.DayView.LiveBowl;
import stirtide.events.view.DayView.QueuedBowl;

/** What the keys of the bar do with one mix for two bowls. */
final class BatchActions {
    private BatchActions() {}

    /** The second bowl of a mix that is not divided is empty: what is done is done to the first. */
    static boolean isSecondOfOneMix(LiveBowl bowl) {
        return bowl.batch()
                .filter(batch -> !batch.divided() && !BatchText.isMixedIn(batch, bowl.bowl()))
                .isPresent();
    }

    /** One mix or this bowl alone: whoever mixes chooses. */
    static UiEffect begin(QueuedBowl queued, UiState state) {
        BatchCard batch = queued.batch().orElseThrow();
        String bowl = queued.bowl().bowl();
        String person = state.operator().personId();
        DayView view = state.view().orElseThrow();
        var ids = batch.shares().stream().map(DayView.ShareCard::bowl).toList();
        var one = new UiEffect.Send(
                new DayCommand.BeginBatch(ids, person),
                "bowls " + BatchText.bowls(batch) + " begun as one mix",
                Optional.of(WeighPanel.of(batch, view)));
        var alone = new UiEffect.Send(
                new DayCommand.BeginBowl(bowl, person),
                "bowl " + bowl + " begun",
                Optional.of(WeighPanel.of(queued, view)));
        return new UiEffect.Open(FormPanel.choice(
                "MIX  bowls " + BatchText.bowls(batch) + "  " + BatchText.chairs(batch),
                "mix",
                List.of("one mix, two bowls", "only bowl " + bowl + ", alone"),
                0,
                BatchText.shares(batch),
                place -> place == 0 ? one : alone));
    }

    static UiEffect weigh(LiveBowl bowl, DayView view) {
        Optional<BatchCard> batch = bowl.batch();
        if (batch.isEmpty()) return new UiEffect.Open(WeighPanel.of(bowl, view));
        Optional<DayView.WeighedCard> weighed = batch.get().weighed().filter(DayView.WeighedCard::insideDirections);
        if (weighed.isEmpty()) return new UiEffect.Open(WeighPanel.of(bowl, view));
        int whole = weighed.get().lightenerMilligrams() + weighed.get().developerMilligrams();
        return new UiEffect.Open(new DividePanel(batch.get(), whole));
    }

    /** A mix that is not divided goes whole. */
    static UiEffect bin(LiveBowl bowl, UiState state) {
        Optional<BatchCard> batch = bowl.batch().filter(mix -> !mix.divided());
        boolean past = state.isPast(bowl);
        if (batch.isEmpty()) return new UiEffect.Open(BinPanel.of(bowl, past));
        String id = batch.get().mixedIn().bowl();
        List<String> causes = BinPanel.causes();
        int first = (past ? OverMixCause.PAST_LIFE : OverMixCause.WRONG_RATIO).ordinal();
        return new UiEffect.Open(FormPanel.choice(
                "BIN  the whole mix for bowls " + BatchText.bowls(batch.get()),
                "because",
                causes,
                first,
                "all that was mixed goes; never close leftovers in a container",
                place -> {
                    var send = new UiEffect.Send(
                            new DayCommand.BinBatch(id, OverMixCause.values()[place]),
                            "mix in bowl " + id + " binned, " + causes.get(place));
                    return new UiEffect.Open(new ConfirmPanel(
                            "BIN?",
                            "Throw away the whole mix for bowls " + BatchText.bowls(batch.get()) + ", "
                                    + causes.get(place) + "?",
                            send,
                            state.nanos()));
                }));
    }
}
