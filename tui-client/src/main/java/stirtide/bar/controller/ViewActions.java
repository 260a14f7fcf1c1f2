package stirtide.bar.controller;

import java.util.List;
import java.util.Optional;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.AlarmList;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.OverMixBars;
import stirtide.bar.model.OverMixSelection;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.model.ViewState;
import stirtide.bar.panels.AdvicePanel;
import stirtide.bar.panels.EarliestStartPanel;
import stirtide.bar.panels.ExtraAssistantPanel;
import stirtide.bar.panels.GramsAndCostsPanel;
import stirtide.bar.panels.OverMixBowlsPanel;
import stirtide.bar.panels.PlanComparisonPanel;
import stirtide.bar.panels.ShelvePanel;
import stirtide.bar.panels.WalkInPanel;
import stirtide.bar.panels.setup.TestMixPanel;

/** What keys do that several views share, and the keys of the floor and of the day. */
final class ViewActions {
    private ViewActions() {}

    /** The answer to a key, empty when it belongs to the bar. */
    static Optional<UiEffect> act(KeyAction action, UiState scene) {
        ViewState pages = scene.pages();
        return switch (action) {
            case TO_BAR -> Optional.of(new UiEffect.Turn(pages.to(KeyContext.BAR)));
            case TO_FLOOR -> Optional.of(new UiEffect.Turn(pages.to(KeyContext.FLOOR)));
            case TO_DAY -> Optional.of(new UiEffect.Turn(pages.to(KeyContext.DAY)));
            case TO_SETUP -> Optional.of(new UiEffect.Turn(pages.to(KeyContext.SETUP)));
            case ACKNOWLEDGE -> Optional.of(acknowledge(scene));
            case SHELVE -> Optional.of(shelve(scene));
            case COPY -> Optional.of(copy(scene));
            case LIFT -> Optional.of(FloorActions.lift(scene));
            case COMPARE -> Optional.of(new UiEffect.Open(new PlanComparisonPanel()));
            case COSTS -> Optional.of(GramsAndCostsPanel.ask());
            case TESTS -> Optional.of(TestMixPanel.ask());
            default -> ofPage(action, scene);
        };
    }

    private static Optional<UiEffect> ofPage(KeyAction action, UiState scene) {
        return switch (scene.pages().page()) {
            case FLOOR -> floor(action, scene);
            case SETUP -> SetupActions.act(action, scene);
            default -> day(action, scene);
        };
    }

    private static UiEffect acknowledge(UiState scene) {
        Optional<AlarmList.Row> top =
                scene.board().rows().stream().filter(AlarmList.Row::unseen).findFirst();
        return top.<UiEffect>map(row -> new UiEffect.Seen(row.alarms()))
                .orElse(new UiEffect.Say("every alarm was seen"));
    }

    private static UiEffect shelve(UiState scene) {
        Optional<AlarmList.Row> top = scene.board().rows().stream()
                .filter(row -> !row.first().priority().equals("HIGH"))
                .findFirst();
        String none = scene.board().rows().isEmpty() ? "no alarm to shelve" : "a high alarm cannot be shelved";
        return top.<UiEffect>map(row -> new UiEffect.Open(ShelvePanel.of(row))).orElse(new UiEffect.Say(none));
    }

    private static UiEffect copy(UiState scene) {
        return SelectedRowText.of(scene)
                .<UiEffect>map(UiEffect.Copy::new)
                .orElse(new UiEffect.Say("no row here to copy"));
    }

    private static Optional<UiEffect> floor(KeyAction action, UiState scene) {
        if (action == KeyAction.MOVES) {
            return Optional.of(new UiEffect.AskPlanner(new Inquiry.Ask.Moves(), new AdvicePanel("WHAT TO MOVE")));
        }
        if (action == KeyAction.EARLIEST)
            return scene.view().map(day -> WalkInPanel.opened(day, () -> EarliestStartPanel.of(day)));
        if (action == KeyAction.ONE_MORE)
            return scene.view().map(day -> new UiEffect.Open(ExtraAssistantPanel.of(day, scene)));
        boolean minutes = action == KeyAction.MINUTE_EARLIER || action == KeyAction.MINUTE_LATER;
        if (minutes && !scene.pages().floor().lifted()) {
            return Optional.of(new UiEffect.Say("lift a service first: Enter"));
        }
        return FloorActions.look(action, scene).map(UiEffect.Turn::new);
    }

    private static Optional<UiEffect> day(KeyAction action, UiState scene) {
        if (scene.pages().page() != KeyContext.DAY) return Optional.empty();
        OverMixSelection pick = scene.pages().day();
        return switch (action) {
            case UP -> turn(scene, pick.moved(-1, bars(scene).size()));
            case DOWN -> turn(scene, pick.moved(1, bars(scene).size()));
            case SORT_NEXT -> turn(scene, pick.sorted(1));
            case SORT_BEFORE -> turn(scene, pick.sorted(-1));
            case PERIOD -> turn(scene, pick.otherPeriod());
            case BEHIND -> Optional.of(behind(scene));
            case EXPORT ->
                Optional.of(scene.view()
                        .<UiEffect>map(
                                view -> new UiEffect.Export(view, scene.pages().past()))
                        .orElse(new UiEffect.Say("nothing heard from the service yet")));
            case EARLIER_DAYS -> Optional.of(new UiEffect.AskPast());
            default -> Optional.empty();
        };
    }

    private static Optional<UiEffect> turn(UiState scene, OverMixSelection pick) {
        return Optional.of(new UiEffect.Turn(scene.pages().with(pick)));
    }

    private static List<OverMixBars.Bar> bars(UiState scene) {
        return scene.view()
                .map(view -> OverMixBars.bars(
                        view, scene.pages().past(), scene.pages().day()))
                .orElse(List.of());
    }

    private static UiEffect behind(UiState scene) {
        List<OverMixBars.Bar> bars = bars(scene);
        if (bars.isEmpty()) return new UiEffect.Say("nothing over-mixed in bowls that are done");
        OverMixSelection pick = scene.pages().day();
        int row = Math.min(pick.row(), bars.size() - 1);
        return new UiEffect.Open(new OverMixBowlsPanel(pick, bars.get(row).label()));
    }
}
