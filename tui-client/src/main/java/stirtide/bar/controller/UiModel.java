package stirtide.bar.controller;

import java.util.Optional;
import stirtide.bar.link.ServiceGateway;
import stirtide.bar.model.AlarmList;
import stirtide.bar.model.BowlSelection;
import stirtide.bar.model.Operator;
import stirtide.bar.model.Panel;
import stirtide.bar.model.UiState;
import stirtide.bar.model.ViewState;
import stirtide.events.view.DayView;

/** The part of the terminal that changes: what is shown, what is selected, and what was heard. For one thread only. */
final class UiModel {
    final SignOnTracker signOn;
    final SetupTracker setup;
    final ClockTracker clock;
    final LinkTracker link;
    final AlarmTracker alarms = new AlarmTracker();
    final ScaleTracker scale = new ScaleTracker();
    final MoveComparison lastMove = new MoveComparison();
    final NoticeList notices = new NoticeList();
    ServiceGateway service = ServiceGateway.NONE;
    Optional<DayView> view = Optional.empty();
    Optional<Panel> panel = Optional.empty();
    ViewState pages = ViewState.BAR;
    BowlSelection picks = BowlSelection.FIRST;
    boolean leaving;

    UiModel(Operator operator, long startNanos) {
        signOn = new SignOnTracker(operator, () -> service, startNanos);
        setup = new SetupTracker(() -> service);
        clock = new ClockTracker(startNanos);
        link = new LinkTracker(startNanos);
    }

    /** What to draw at a monotonic reading. */
    UiState state(long nanos) {
        var state = new UiState(
                view,
                clock.reading(nanos),
                link.line(nanos),
                signOn.operator(),
                picks,
                Optional.empty(),
                notices.all(),
                pages,
                view.map(day -> alarms.board(day.alarms())).orElse(AlarmList.NONE),
                scale.line());
        return state.withPanel(panel.map(open -> open.overlay(state)));
    }

    /** Looks at the alarms of the newest view. */
    void lookAtAlarms(long nanos) {
        if (link.everHeard()) view.ifPresent(day -> alarms.look(day.alarms(), clock.at(nanos), nanos));
    }
}
