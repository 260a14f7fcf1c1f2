package stirtide.bar.controller;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.model.FollowedClock;
import stirtide.bar.model.LinkStatus;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.BowlPanel;
import stirtide.bar.panels.ConfirmPanel;
import stirtide.bar.panels.FindBowlPanel;
import stirtide.bar.panels.KeysPanel;
import stirtide.bar.panels.ReasonsPanel;
import stirtide.bar.panels.ServicesPanel;
import stirtide.bar.panels.WalkInPanel;
import stirtide.bar.panels.WeighPanel;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/** What the keys of the bar view do. */
final class BarActions {
    private static final int MUCH_LIFE_MINUTES = 10;
    private static final int[] RATES = {250, 500, 1000, 2000, 5000, 10_000, 20_000, 60_000, 120_000, 300_000};
    private static final String MIXING = "MIXING";
    private static final String WEIGHED = "WEIGHED";

    private int rateBeforePause = FollowedClock.REAL;

    UiEffect act(KeyAction action, UiState scene) {
        if (action == KeyAction.KEYS) return new UiEffect.Open(new KeysPanel());
        if (scene.view().isEmpty()) return new UiEffect.Say("nothing heard from the service yet");
        DayView view = scene.view().get();
        return switch (action) {
            case MIX -> mix(view, scene);
            case WEIGH -> live(view, scene, MIXING, "weigh", bowl -> BatchActions.weigh(bowl, view));
            case HAND_OVER -> live(view, scene, WEIGHED, "hand over", BarActions::handOver);
            case FINISH -> live(view, scene, "", "finish", bowl -> finish(bowl, scene));
            case BIN -> live(view, scene, "", "bin", bowl -> BatchActions.bin(bowl, scene));
            case SERVICES -> new UiEffect.Open(new ServicesPanel(0));
            case WALK_IN -> WalkInPanel.opened(view, () -> WalkInPanel.of(view, scene));
            case TAKE_BACK -> takeBack(view, scene);
            case REASONS -> new UiEffect.Open(new ReasonsPanel());
            case FIND -> new UiEffect.Open(new FindBowlPanel());
            case OPEN -> open(view, scene);
            case PAUSE -> pause(scene);
            case SLOWER -> rate(scene, -1);
            case FASTER -> rate(scene, 1);
            default -> new UiEffect.Stay();
        };
    }

    private static UiEffect mix(DayView view, UiState scene) {
        Optional<DayView.QueuedBowl> next = scene.picks().queuedIn(view);
        if (next.isEmpty()) return new UiEffect.Say("no bowl is waiting to be mixed");
        if (next.get().batch().isPresent()) return BatchActions.begin(next.get(), scene);
        String bowl = next.get().bowl().bowl();
        var command = new DayCommand.BeginBowl(bowl, scene.operator().personId());
        return new UiEffect.Send(command, "bowl " + bowl + " begun", Optional.of(WeighPanel.of(next.get(), view)));
    }

    // With the focus on the live bowls the picked one is meant; from the queue the only one it can be.
    private static UiEffect live(
            DayView view, UiState scene, String stage, String verb, Function<DayView.LiveBowl, UiEffect> then) {
        if (scene.picks().onLive()) {
            return scene.picks().liveIn(view).map(then).orElse(new UiEffect.Say("no bowl is live"));
        }
        List<DayView.LiveBowl> fitting = view.live().stream()
                .filter(bowl -> stage.isEmpty() || bowl.stage().equals(stage))
                .filter(bowl -> !BatchActions.isSecondOfOneMix(bowl))
                .toList();
        if (fitting.size() == 1) return then.apply(fitting.get(0));
        String many = "pick the live bowl to " + verb + " first: Tab, then the arrows";
        return new UiEffect.Say(fitting.isEmpty() ? "no live bowl to " + verb : many);
    }

    private static UiEffect handOver(DayView.LiveBowl bowl) {
        String words = "bowl " + bowl.bowl() + " handed over to chair " + bowl.chair();
        return new UiEffect.Send(new DayCommand.HandOverBowl(bowl.bowl()), words, Optional.empty());
    }

    private static UiEffect finish(DayView.LiveBowl bowl, UiState scene) {
        String words = "bowl " + bowl.bowl() + " finished";
        var send = new UiEffect.Send(new DayCommand.FinishBowl(bowl.bowl()), words, Optional.empty());
        Duration left = Duration.between(scene.now(), bowl.lifeEnds());
        if (left.compareTo(Duration.ofMinutes(MUCH_LIFE_MINUTES)) <= 0) return send;
        String sentence = "Bowl " + bowl.bowl() + " has " + left.toMinutes()
                + " min of life left. Is it empty but for what sticks to it?";
        return new UiEffect.Open(new ConfirmPanel("FINISH?", sentence, send, scene.nanos()));
    }

    private static UiEffect takeBack(DayView view, UiState scene) {
        // What was shown before the link was lost may not be the last action any more.
        if (scene.link().state() != LinkStatus.State.LIVE) {
            return new UiEffect.Say("taking back needs the service: wait for the link");
        }
        String me = scene.operator().personId();
        Optional<DayView.ActionCard> last = view.actions().stream()
                .filter(action -> action.actor().equals(me))
                .findFirst();
        if (last.isEmpty()) return new UiEffect.Say("no action of yours can be taken back");
        var send = new UiEffect.Send(
                new DayCommand.TakeBack(last.get().revision()),
                "taken back: " + last.get().sentence(),
                Optional.empty());
        return new UiEffect.Open(new ConfirmPanel("TAKE BACK?", last.get().sentence(), send, scene.nanos()));
    }

    private static UiEffect open(DayView view, UiState scene) {
        Optional<String> bowl = scene.picks().onLive()
                ? scene.picks().liveIn(view).map(DayView.LiveBowl::bowl)
                : scene.picks().queuedIn(view).map(row -> row.bowl().bowl());
        return bowl.<UiEffect>map(id -> new UiEffect.Open(new BowlPanel(id)))
                .orElse(new UiEffect.Say("no bowl here to open"));
    }

    private UiEffect pause(UiState scene) {
        if (scene.ratePermille() == 0) return new UiEffect.Rate(rateBeforePause);
        rateBeforePause = scene.ratePermille();
        return new UiEffect.Rate(0);
    }

    private UiEffect rate(UiState scene, int step) {
        int now = scene.ratePermille() == 0 ? rateBeforePause : scene.ratePermille();
        int next = now;
        for (int rate : RATES) {
            boolean closer = step > 0
                    ? rate > now && (next == now || rate < next)
                    : rate < now && rate > (next == now ? 0 : next);
            if (closer) next = rate;
        }
        return new UiEffect.Rate(next);
    }

    static ConfirmPanel leaveQuestion(long nanos, int waitingEntries) {
        String kept = waitingEntries == 0 ? "" : " " + waitingEntries + " entries stay on disk and are sent next time.";
        return new ConfirmPanel("LEAVE?", "Leave the bar?" + kept, new UiEffect.Leave(), nanos);
    }
}
