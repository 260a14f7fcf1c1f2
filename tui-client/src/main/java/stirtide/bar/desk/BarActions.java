package stirtide.bar.desk;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stirtide.bar.clock.SalonTime;
import stirtide.bar.entry.BowlPanel;
import stirtide.bar.entry.FindPanel;
import stirtide.bar.entry.KeysPanel;
import stirtide.bar.entry.Question;
import stirtide.bar.entry.ReasonsPanel;
import stirtide.bar.entry.ServicesPanel;
import stirtide.bar.entry.WalkInPanel;
import stirtide.bar.entry.WeighPanel;
import stirtide.bar.keys.Action;
import stirtide.bar.scene.LinkLine;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/** What the keys of the bar view do. */
final class BarActions {
    private static final int MUCH_LIFE_MINUTES = 10;
    private static final int[] RATES = {250, 500, 1000, 2000, 5000, 10_000, 20_000, 60_000, 120_000, 300_000};
    private static final String MIXING = "MIXING";
    private static final String WEIGHED = "WEIGHED";

    private int rateBeforePause = SalonTime.REAL;

    PanelAnswer act(Action action, Scene scene) {
        if (action == Action.KEYS) return new PanelAnswer.Open(new KeysPanel());
        if (scene.view().isEmpty()) return new PanelAnswer.Say("nothing heard from the service yet");
        DayView view = scene.view().get();
        return switch (action) {
            case MIX -> mix(view, scene);
            case WEIGH -> live(view, scene, MIXING, "weigh", bowl -> BatchActions.weigh(bowl, view));
            case HAND_OVER -> live(view, scene, WEIGHED, "hand over", BarActions::handOver);
            case FINISH -> live(view, scene, "", "finish", bowl -> finish(bowl, scene));
            case BIN -> live(view, scene, "", "bin", bowl -> BatchActions.bin(bowl, scene));
            case SERVICES -> new PanelAnswer.Open(new ServicesPanel(0));
            case WALK_IN -> WalkInPanel.opened(view, () -> WalkInPanel.of(view, scene));
            case TAKE_BACK -> takeBack(view, scene);
            case REASONS -> new PanelAnswer.Open(new ReasonsPanel());
            case FIND -> new PanelAnswer.Open(new FindPanel());
            case OPEN -> open(view, scene);
            case PAUSE -> pause(scene);
            case SLOWER -> rate(scene, -1);
            case FASTER -> rate(scene, 1);
            default -> new PanelAnswer.Stay();
        };
    }

    private static PanelAnswer mix(DayView view, Scene scene) {
        Optional<DayView.QueuedBowl> next = scene.picks().queuedIn(view);
        if (next.isEmpty()) return new PanelAnswer.Say("no bowl is waiting to be mixed");
        if (next.get().batch().isPresent()) return BatchActions.begin(next.get(), scene);
        String bowl = next.get().bowl().bowl();
        var command = new DayCommand.BeginBowl(bowl, scene.operator().personId());
        return new PanelAnswer.Send(command, "bowl " + bowl + " begun", Optional.of(WeighPanel.of(next.get(), view)));
    }

    // With the focus on the live bowls the picked one is meant; from the queue the only one it can be.
    private static PanelAnswer live(
            DayView view, Scene scene, String stage, String verb, Function<DayView.LiveBowl, PanelAnswer> then) {
        if (scene.picks().onLive()) {
            return scene.picks().liveIn(view).map(then).orElse(new PanelAnswer.Say("no bowl is live"));
        }
        List<DayView.LiveBowl> fitting = view.live().stream()
                .filter(bowl -> stage.isEmpty() || bowl.stage().equals(stage))
                .filter(bowl -> !BatchActions.isSecondOfOneMix(bowl))
                .toList();
        if (fitting.size() == 1) return then.apply(fitting.get(0));
        String many = "pick the live bowl to " + verb + " first: Tab, then the arrows";
        return new PanelAnswer.Say(fitting.isEmpty() ? "no live bowl to " + verb : many);
    }

    private static PanelAnswer handOver(DayView.LiveBowl bowl) {
        String words = "bowl " + bowl.bowl() + " handed over to chair " + bowl.chair();
        return new PanelAnswer.Send(new DayCommand.HandOverBowl(bowl.bowl()), words, Optional.empty());
    }

    private static PanelAnswer finish(DayView.LiveBowl bowl, Scene scene) {
        String words = "bowl " + bowl.bowl() + " finished";
        var send = new PanelAnswer.Send(new DayCommand.FinishBowl(bowl.bowl()), words, Optional.empty());
        Duration left = Duration.between(scene.now(), bowl.lifeEnds());
        if (left.compareTo(Duration.ofMinutes(MUCH_LIFE_MINUTES)) <= 0) return send;
        String sentence = "Bowl " + bowl.bowl() + " has " + left.toMinutes()
                + " min of life left. Is it empty but for what sticks to it?";
        return new PanelAnswer.Open(new Question("FINISH?", sentence, send, scene.nanos()));
    }

    private static PanelAnswer takeBack(DayView view, Scene scene) {
        // What was shown before the link was lost may not be the last action any more.
        if (scene.link().state() != LinkLine.State.LIVE) {
            return new PanelAnswer.Say("taking back needs the service: wait for the link");
        }
        String me = scene.operator().personId();
        Optional<DayView.ActionCard> last = view.actions().stream()
                .filter(action -> action.actor().equals(me))
                .findFirst();
        if (last.isEmpty()) return new PanelAnswer.Say("no action of yours can be taken back");
        var send = new PanelAnswer.Send(
                new DayCommand.TakeBack(last.get().revision()),
                "taken back: " + last.get().sentence(),
                Optional.empty());
        return new PanelAnswer.Open(new Question("TAKE BACK?", last.get().sentence(), send, scene.nanos()));
    }

    private static PanelAnswer open(DayView view, Scene scene) {
        Optional<String> bowl = scene.picks().onLive()
                ? scene.picks().liveIn(view).map(DayView.LiveBowl::bowl)
                : scene.picks().queuedIn(view).map(row -> row.bowl().bowl());
        return bowl.<PanelAnswer>map(id -> new PanelAnswer.Open(new BowlPanel(id)))
                .orElse(new PanelAnswer.Say("no bowl here to open"));
    }

    private PanelAnswer pause(Scene scene) {
        if (scene.ratePermille() == 0) return new PanelAnswer.Rate(rateBeforePause);
        rateBeforePause = scene.ratePermille();
        return new PanelAnswer.Rate(0);
    }

    private PanelAnswer rate(Scene scene, int step) {
        int now = scene.ratePermille() == 0 ? rateBeforePause : scene.ratePermille();
        int next = now;
        for (int rate : RATES) {
            boolean closer = step > 0
                    ? rate > now && (next == now || rate < next)
                    : rate < now && rate > (next == now ? 0 : next);
            if (closer) next = rate;
        }
        return new PanelAnswer.Rate(next);
    }

    static Question leaveQuestion(long nanos, int waitingEntries) {
        String kept = waitingEntries == 0 ? "" : " " + waitingEntries + " entries stay on disk and are sent next time.";
        return new Question("LEAVE?", "Leave the bar?" + kept, new PanelAnswer.Leave(), nanos);
    }
}
