package stirtide.bar.desk;

import java.util.List;
import java.util.Optional;
import stirtide.bar.entry.AdvicePanel;
import stirtide.bar.entry.BehindPanel;
import stirtide.bar.entry.ComparePanel;
import stirtide.bar.entry.EarliestPanel;
import stirtide.bar.entry.GramsPanel;
import stirtide.bar.entry.HelpPanel;
import stirtide.bar.entry.ShelvePanel;
import stirtide.bar.entry.WalkInPanel;
import stirtide.bar.grams.DayGrams;
import stirtide.bar.keys.Action;
import stirtide.bar.keys.Place;
import stirtide.bar.scene.Advice;
import stirtide.bar.scene.AlarmBoard;
import stirtide.bar.scene.DayPick;
import stirtide.bar.scene.Pages;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;
import stirtide.bar.setup.TestMixPanel;

/** What keys do that several views share, and the keys of the floor and of the day. */
final class PageActions {
    private PageActions() {}

    /** The answer to a key, empty when it belongs to the bar. */
    static Optional<PanelAnswer> act(Action action, Scene scene) {
        Pages pages = scene.pages();
        return switch (action) {
            case TO_BAR -> Optional.of(new PanelAnswer.Turn(pages.to(Place.BAR)));
            case TO_FLOOR -> Optional.of(new PanelAnswer.Turn(pages.to(Place.FLOOR)));
            case TO_DAY -> Optional.of(new PanelAnswer.Turn(pages.to(Place.DAY)));
            case TO_SETUP -> Optional.of(new PanelAnswer.Turn(pages.to(Place.SETUP)));
            case ACKNOWLEDGE -> Optional.of(acknowledge(scene));
            case SHELVE -> Optional.of(shelve(scene));
            case COPY -> Optional.of(copy(scene));
            case LIFT -> Optional.of(FloorActions.lift(scene));
            case COMPARE -> Optional.of(new PanelAnswer.Open(new ComparePanel()));
            case COSTS -> Optional.of(GramsPanel.ask());
            case TESTS -> Optional.of(TestMixPanel.ask());
            default -> ofPage(action, scene);
        };
    }

    private static Optional<PanelAnswer> ofPage(Action action, Scene scene) {
        return switch (scene.pages().page()) {
            case FLOOR -> floor(action, scene);
            case SETUP -> SetupActions.act(action, scene);
            default -> day(action, scene);
        };
    }

    private static PanelAnswer acknowledge(Scene scene) {
        Optional<AlarmBoard.Row> top =
                scene.board().rows().stream().filter(AlarmBoard.Row::unseen).findFirst();
        return top.<PanelAnswer>map(row -> new PanelAnswer.Seen(row.alarms()))
                .orElse(new PanelAnswer.Say("every alarm was seen"));
    }

    private static PanelAnswer shelve(Scene scene) {
        Optional<AlarmBoard.Row> top = scene.board().rows().stream()
                .filter(row -> !row.first().priority().equals("HIGH"))
                .findFirst();
        String none = scene.board().rows().isEmpty() ? "no alarm to shelve" : "a high alarm cannot be shelved";
        return top.<PanelAnswer>map(row -> new PanelAnswer.Open(ShelvePanel.of(row)))
                .orElse(new PanelAnswer.Say(none));
    }

    private static PanelAnswer copy(Scene scene) {
        return RowText.of(scene)
                .<PanelAnswer>map(PanelAnswer.Copy::new)
                .orElse(new PanelAnswer.Say("no row here to copy"));
    }

    private static Optional<PanelAnswer> floor(Action action, Scene scene) {
        if (action == Action.MOVES) {
            return Optional.of(new PanelAnswer.AskPlanner(new Advice.Ask.Moves(), new AdvicePanel("WHAT TO MOVE")));
        }
        if (action == Action.EARLIEST)
            return scene.view().map(day -> WalkInPanel.opened(day, () -> EarliestPanel.of(day)));
        if (action == Action.ONE_MORE) return scene.view().map(day -> new PanelAnswer.Open(HelpPanel.of(day, scene)));
        boolean minutes = action == Action.MINUTE_EARLIER || action == Action.MINUTE_LATER;
        if (minutes && !scene.pages().floor().lifted()) {
            return Optional.of(new PanelAnswer.Say("lift a service first: Enter"));
        }
        return FloorActions.look(action, scene).map(PanelAnswer.Turn::new);
    }

    private static Optional<PanelAnswer> day(Action action, Scene scene) {
        if (scene.pages().page() != Place.DAY) return Optional.empty();
        DayPick pick = scene.pages().day();
        return switch (action) {
            case UP -> turn(scene, pick.moved(-1, bars(scene).size()));
            case DOWN -> turn(scene, pick.moved(1, bars(scene).size()));
            case SORT_NEXT -> turn(scene, pick.sorted(1));
            case SORT_BEFORE -> turn(scene, pick.sorted(-1));
            case PERIOD -> turn(scene, pick.otherPeriod());
            case BEHIND -> Optional.of(behind(scene));
            case EXPORT ->
                Optional.of(scene.view()
                        .<PanelAnswer>map(view ->
                                new PanelAnswer.Export(view, scene.pages().past()))
                        .orElse(new PanelAnswer.Say("nothing heard from the service yet")));
            case EARLIER_DAYS -> Optional.of(new PanelAnswer.AskPast());
            default -> Optional.empty();
        };
    }

    private static Optional<PanelAnswer> turn(Scene scene, DayPick pick) {
        return Optional.of(new PanelAnswer.Turn(scene.pages().with(pick)));
    }

    private static List<DayGrams.Bar> bars(Scene scene) {
        return scene.view()
                .map(view ->
                        DayGrams.bars(view, scene.pages().past(), scene.pages().day()))
                .orElse(List.of());
    }

    private static PanelAnswer behind(Scene scene) {
        List<DayGrams.Bar> bars = bars(scene);
        if (bars.isEmpty()) return new PanelAnswer.Say("nothing over-mixed in bowls that are done");
        DayPick pick = scene.pages().day();
        int row = Math.min(pick.row(), bars.size() - 1);
        return new PanelAnswer.Open(new BehindPanel(pick, bars.get(row).label()));
    }
}
