package stirtide.bar.desk;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stirtide.bar.entry.BatchWords;
import stirtide.bar.entry.BinPanel;
import stirtide.bar.entry.ChoicePanel;
import stirtide.bar.entry.DividePanel;
import stirtide.bar.entry.Question;
import stirtide.bar.entry.WeighPanel;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;
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
                .filter(batch -> !batch.divided() && !BatchWords.isMixedIn(batch, bowl.bowl()))
                .isPresent();
    }

    /** One mix or this bowl alone: whoever mixes chooses. */
    static PanelAnswer begin(QueuedBowl queued, Scene scene) {
        BatchCard batch = queued.batch().orElseThrow();
        String bowl = queued.bowl().bowl();
        String person = scene.operator().personId();
        DayView view = scene.view().orElseThrow();
        var ids = batch.shares().stream().map(DayView.ShareCard::bowl).toList();
        var one = new PanelAnswer.Send(
                new DayCommand.BeginBatch(ids, person),
                "bowls " + BatchWords.bowls(batch) + " begun as one mix",
                Optional.of(WeighPanel.of(batch, view)));
        var alone = new PanelAnswer.Send(
                new DayCommand.BeginBowl(bowl, person),
                "bowl " + bowl + " begun",
                Optional.of(WeighPanel.of(queued, view)));
        return new PanelAnswer.Open(new ChoicePanel(
                "MIX  bowls " + BatchWords.bowls(batch) + "  " + BatchWords.chairs(batch),
                "mix",
                List.of("one mix, two bowls", "only bowl " + bowl + ", alone"),
                0,
                BatchWords.shares(batch),
                place -> place == 0 ? one : alone));
    }

    static PanelAnswer weigh(LiveBowl bowl, DayView view) {
        Optional<BatchCard> batch = bowl.batch();
        if (batch.isEmpty()) return new PanelAnswer.Open(WeighPanel.of(bowl, view));
        Optional<DayView.WeighedCard> weighed = batch.get().weighed().filter(DayView.WeighedCard::insideDirections);
        if (weighed.isEmpty()) return new PanelAnswer.Open(WeighPanel.of(bowl, view));
        int whole = weighed.get().lightenerMilligrams() + weighed.get().developerMilligrams();
        return new PanelAnswer.Open(new DividePanel(batch.get(), whole));
    }

    /** A mix that is not divided goes whole. */
    static PanelAnswer bin(LiveBowl bowl, Scene scene) {
        Optional<BatchCard> batch = bowl.batch().filter(mix -> !mix.divided());
        boolean past = scene.isPast(bowl);
        if (batch.isEmpty()) return new PanelAnswer.Open(BinPanel.of(bowl, past));
        String id = batch.get().mixedIn().bowl();
        List<String> causes =
                Arrays.stream(OverMixCause.values()).map(BinPanel::words).toList();
        int first = (past ? OverMixCause.PAST_LIFE : OverMixCause.WRONG_RATIO).ordinal();
        return new PanelAnswer.Open(new ChoicePanel(
                "BIN  the whole mix for bowls " + BatchWords.bowls(batch.get()),
                "because",
                causes,
                first,
                "all that was mixed goes; never close leftovers in a container",
                place -> {
                    var send = new PanelAnswer.Send(
                            new DayCommand.BinBatch(id, OverMixCause.values()[place]),
                            "mix in bowl " + id + " binned, " + causes.get(place),
                            Optional.empty());
                    return new PanelAnswer.Open(new Question(
                            "BIN?",
                            "Throw away the whole mix for bowls " + BatchWords.bowls(batch.get()) + ", "
                                    + causes.get(place) + "?",
                            send,
                            scene.nanos()));
                }));
    }
}
