package stirtide.bar.controller;

import java.util.List;
import java.util.Optional;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.AlarmList;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.OverMixBars;
import stirtide.bar.model.OverMixSelection;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.model.ViewState;
import stirtide.bar.panels.ShelvePanel;
import stirtide.bar.panels.details.GramsAndCostsPanel;
import stirtide.bar.panels.details.OverMixBowlsPanel;
import stirtide.bar.panels.details.PlanComparisonPanel;
import stirtide.bar.panels.planner.AdvicePanel;
import stirtide.bar.panels.planner.PlannerForms;
import stirtide.bar.panels.services.WalkInPanel;
import stirtide.bar.panels.setup.TestMixPanel;

/** What keys do that several views share, and the keys of the floor and of the day. */
final class ViewActions {
    private ViewActions() {}

    /** The answer to a key, empty when it belongs to the bar. */
    static Optional<UiEffect> act(KeyAction action, UiState state) {
        ViewState pages = state.pages();
        return switch (action) {
            case TO_BAR -> Optional.of(new UiEffect.ShowView(pages.to(KeyContext.BAR)));
            case TO_FLOOR -> Optional.of(new UiEffect.ShowView(pages.to(KeyContext.FLOOR)));
            case TO_DAY -> Optional.of(new UiEffect.ShowView(pages.to(KeyContext.DAY)));
            case TO_SETUP -> Optional.of(new UiEffect.ShowView(pages.to(KeyContext.SETUP)));
            case ACKNOWLEDGE -> Optional.of(acknowledge(state));
            case SHELVE -> Optional.of(shelve(state));
            case COPY -> Optional.of(copy(state));
            case LIFT -> Optional.of(FloorActions.lift(state));
            case COMPARE -> Optional.of(new UiEffect.Open(PlanComparisonPanel.of()));
            case COSTS -> Optional.of(GramsAndCostsPanel.ask());
            case TESTS -> Optional.of(TestMixPanel.ask());
            default -> ofPage(action, state);
        };
    }

    private static Optional<UiEffect> ofPage(KeyAction action, UiState state) {
        return switch (state.pages().page()) {
            case FLOOR -> floor(action, state);
            case SETUP -> SetupActions.act(action, state);
            default -> day(action, state);
        };
    }

    private static UiEffect acknowledge(UiState state) {
        Optional<AlarmList.Row> top =
                state.alarms().rows().stream().filter(AlarmList.Row::unseen).findFirst();
        return top.<UiEffect>map(row -> new UiEffect.AcknowledgeAlarms(row.alarms()))
                .orElse(new UiEffect.Notify("every alarm was seen"));
    }

    private static UiEffect shelve(UiState state) {
        Optional<AlarmList.Row> top = state.alarms().rows().stream()
                .filter(row -> !row.first().priority().equals("HIGH"))
                .findFirst();
        String none = state.alarms().rows().isEmpty() ? "no alarm to shelve" : "a high alarm cannot be shelved";
        return top.<UiEffect>map(row -> new UiEffect.Open(ShelvePanel.of(row))).orElse(new UiEffect.Notify(none));
    }

    private static UiEffect copy(UiState state) {
        return SelectedRowText.of(state)
                .<UiEffect>map(UiEffect.CopyText::new)
                .orElse(new UiEffect.Notify("no row here to copy"));
    }

    private static Optional<UiEffect> floor(KeyAction action, UiState state) {
        if (action == KeyAction.MOVES) {
            return Optional.of(new UiEffect.Ask(new Inquiry.Ask.Moves(), new AdvicePanel("WHAT TO MOVE")));
        }
        if (action == KeyAction.EARLIEST)
            return state.view().map(day -> WalkInPanel.opened(day, () -> PlannerForms.earliestStart(day)));
        if (action == KeyAction.ONE_MORE)
            return state.view().map(day -> new UiEffect.Open(PlannerForms.extraAssistant(day, state)));
        boolean minutes = action == KeyAction.MINUTE_EARLIER || action == KeyAction.MINUTE_LATER;
        if (minutes && !state.pages().floor().lifted()) {
            return Optional.of(new UiEffect.Notify("lift a service first: Enter"));
        }
        return FloorActions.look(action, state).map(UiEffect.ShowView::new);
    }

    private static Optional<UiEffect> day(KeyAction action, UiState state) {
        if (state.pages().page() != KeyContext.DAY) return Optional.empty();
        OverMixSelection pick = state.pages().day();
        return switch (action) {
            case UP -> turn(state, pick.moved(-1, bars(state).size()));
            case DOWN -> turn(state, pick.moved(1, bars(state).size()));
            case SORT_NEXT -> turn(state, pick.sorted(1));
            case SORT_BEFORE -> turn(state, pick.sorted(-1));
            case PERIOD -> turn(state, pick.otherPeriod());
            case BEHIND -> Optional.of(behind(state));
            case EXPORT ->
                Optional.of(state.view()
                        .<UiEffect>map(view ->
                                new UiEffect.ExportDay(view, state.pages().past()))
                        .orElse(new UiEffect.Notify("nothing heard from the service yet")));
            case EARLIER_DAYS -> Optional.of(new UiEffect.LoadPastDays());
            default -> Optional.empty();
        };
    }

    private static Optional<UiEffect> turn(UiState state, OverMixSelection pick) {
        return Optional.of(new UiEffect.ShowView(state.pages().withDay(pick)));
    }

    private static List<OverMixBars.Bar> bars(UiState state) {
        return state.view()
                .map(view -> OverMixBars.bars(
                        view, state.pages().past(), state.pages().day()))
                .orElse(List.of());
    }

    private static UiEffect behind(UiState state) {
        List<OverMixBars.Bar> bars = bars(state);
        if (bars.isEmpty()) return new UiEffect.Notify("nothing over-mixed in bowls that are done");
        OverMixSelection pick = state.pages().day();
        int row = Math.min(pick.row(), bars.size() - 1);
        return new UiEffect.Open(OverMixBowlsPanel.of(pick, bars.get(row).label()));
    }
}
