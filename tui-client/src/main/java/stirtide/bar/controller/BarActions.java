package stirtide.bar.controller;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.model.FollowedClock;
import stirtide.bar.model.LinkStatus;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.FindBowlPanel;
import stirtide.bar.panels.KeysPanel;
import stirtide.bar.panels.details.BowlPanel;
import stirtide.bar.panels.details.ReasonsPanel;
import stirtide.bar.panels.form.ConfirmPanel;
import stirtide.bar.panels.services.ServicesPanel;
import stirtide.bar.panels.services.WalkInPanel;
import stirtide.bar.panels.weighing.WeighPanel;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/** What the keys of the bar view do. */
final class BarActions {
    private static final int MUCH_LIFE_MINUTES = 10;
    private static final int[] RATES = {250, 500, 1000, 2000, 5000, 10_000, 20_000, 60_000, 120_000, 300_000};
    private static final String MIXING = "MIXING";
    private static final String WEIGHED = "WEIGHED";

    private int rateBeforePause = FollowedClock.REAL;

    UiEffect act(KeyAction action, UiState state) {
        if (action == KeyAction.KEYS) return new UiEffect.Open(KeysPanel.of());
        if (state.view().isEmpty()) return new UiEffect.Notify("nothing heard from the service yet");
        DayView view = state.view().get();
        return switch (action) {
            case MIX -> mix(view, state);
            case WEIGH -> live(view, state, MIXING, "weigh", bowl -> BatchActions.weigh(bowl, view));
            case HAND_OVER -> live(view, state, WEIGHED, "hand over", BarActions::handOver);
            case FINISH -> live(view, state, "", "finish", bowl -> finish(bowl, state));
            case BIN -> live(view, state, "", "bin", bowl -> BatchActions.bin(bowl, state));
            case SERVICES -> new UiEffect.Open(new ServicesPanel(0));
            case WALK_IN -> WalkInPanel.opened(view, () -> WalkInPanel.of(view, state));
            case TAKE_BACK -> takeBack(view, state);
            case REASONS -> new UiEffect.Open(ReasonsPanel.of());
            case FIND -> new UiEffect.Open(new FindBowlPanel());
            case OPEN -> open(view, state);
            case PAUSE -> pause(state);
            case SLOWER -> rate(state, -1);
            case FASTER -> rate(state, 1);
            default -> new UiEffect.Stay();
        };
    }

    private static UiEffect mix(DayView view, UiState state) {
        Optional<DayView.QueuedBowl> next = state.picks().queuedIn(view);
        if (next.isEmpty()) return new UiEffect.Notify("no bowl is waiting to be mixed");
        if (next.get().batch().isPresent()) return BatchActions.begin(next.get(), state);
        String bowl = next.get().bowl().bowl();
        var command = new DayCommand.BeginBowl(bowl, state.operator().personId());
        return new UiEffect.Send(command, "bowl " + bowl + " begun", Optional.of(WeighPanel.of(next.get(), view)));
    }

    // With the focus on the live bowls the picked one is meant; from the queue the only one it can be.
    private static UiEffect live(
            DayView view, UiState state, String stage, String verb, Function<DayView.LiveBowl, UiEffect> then) {
        if (state.picks().onLive()) {
            return state.picks().liveIn(view).map(then).orElse(new UiEffect.Notify("no bowl is live"));
        }
        List<DayView.LiveBowl> fitting = view.live().stream()
                .filter(bowl -> stage.isEmpty() || bowl.stage().equals(stage))
                .filter(bowl -> !BatchActions.isSecondOfOneMix(bowl))
                .toList();
        if (fitting.size() == 1) return then.apply(fitting.get(0));
        String many = "pick the live bowl to " + verb + " first: Tab, then the arrows";
        return new UiEffect.Notify(fitting.isEmpty() ? "no live bowl to " + verb : many);
    }

    private static UiEffect handOver(DayView.LiveBowl bowl) {
        String words = "bowl " + bowl.bowl() + " handed over to chair " + bowl.chair();
        return new UiEffect.Send(new DayCommand.HandOverBowl(bowl.bowl()), words);
    }

    private static UiEffect finish(DayView.LiveBowl bowl, UiState state) {
        String words = "bowl " + bowl.bowl() + " finished";
        var send = new UiEffect.Send(new DayCommand.FinishBowl(bowl.bowl()), words);
        Duration left = Duration.between(state.now(), bowl.lifeEnds());
        if (left.compareTo(Duration.ofMinutes(MUCH_LIFE_MINUTES)) <= 0) return send;
        String sentence = "Bowl " + bowl.bowl() + " has " + left.toMinutes()
                + " min of life left. Is it empty but for what sticks to it?";
        return new UiEffect.Open(new ConfirmPanel("FINISH?", sentence, send, state.nanos()));
    }

    private static UiEffect takeBack(DayView view, UiState state) {
        // What was shown before the link was lost may not be the last action any more.
        if (state.link().state() != LinkStatus.State.LIVE) {
            return new UiEffect.Notify("taking back needs the service: wait for the link");
        }
        String me = state.operator().personId();
        Optional<DayView.ActionCard> last = view.actions().stream()
                .filter(action -> action.actor().equals(me))
                .findFirst();
        if (last.isEmpty()) return new UiEffect.Notify("no action of yours can be taken back");
        var send = new UiEffect.Send(
                new DayCommand.TakeBack(last.get().revision()),
                "taken back: " + last.get().sentence());
        return new UiEffect.Open(new ConfirmPanel("TAKE BACK?", last.get().sentence(), send, state.nanos()));
    }

    private static UiEffect open(DayView view, UiState state) {
        Optional<String> bowl = state.picks().onLive()
                ? state.picks().liveIn(view).map(DayView.LiveBowl::bowl)
                : state.picks().queuedIn(view).map(row -> row.bowl().bowl());
        return bowl.<UiEffect>map(id -> new UiEffect.Open(BowlPanel.of(id)))
                .orElse(new UiEffect.Notify("no bowl here to open"));
    }

    private UiEffect pause(UiState state) {
        if (state.ratePermille() == 0) return new UiEffect.SetClockRate(rateBeforePause);
        rateBeforePause = state.ratePermille();
        return new UiEffect.SetClockRate(0);
    }

    private UiEffect rate(UiState state, int step) {
        int now = state.ratePermille() == 0 ? rateBeforePause : state.ratePermille();
        int next = now;
        for (int rate : RATES) {
            boolean closer = step > 0
                    ? rate > now && (next == now || rate < next)
                    : rate < now && rate > (next == now ? 0 : next);
            if (closer) next = rate;
        }
        return new UiEffect.SetClockRate(next);
    }

    static ConfirmPanel leaveQuestion(long nanos, int waitingEntries) {
        String kept = waitingEntries == 0 ? "" : " " + waitingEntries + " entries stay on disk and are sent next time.";
        return new ConfirmPanel("LEAVE?", "Leave the bar?" + kept, new UiEffect.Quit(), nanos);
    }
}
