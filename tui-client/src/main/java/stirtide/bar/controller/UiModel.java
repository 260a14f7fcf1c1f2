package stirtide.bar.controller;

import java.time.Instant;
import java.util.Optional;
import stirtide.bar.link.ServiceGateway;
import stirtide.bar.model.AlarmList;
import stirtide.bar.model.BowlSelection;
import stirtide.bar.model.FollowedClock;
import stirtide.bar.model.Operator;
import stirtide.bar.model.Panel;
import stirtide.bar.model.ScaleStatus;
import stirtide.bar.model.UiState;
import stirtide.bar.model.ViewState;
import stirtide.bar.scale.ScaleReading;
import stirtide.bar.scale.SteadyWeight;
import stirtide.bar.text.WeightText;
import stirtide.events.view.DayView;

/** The part of the terminal that changes: what is shown, what is selected, and what was heard. For one thread only. */
final class UiModel {
    final SignOnTracker signOn;
    final SetupTracker setup;
    final LinkTracker link;
    final AlarmTracker alarms = new AlarmTracker();
    final SteadyWeight weight = new SteadyWeight();
    final MoveComparison lastMove = new MoveComparison();
    final NoticeList notices = new NoticeList();
    ServiceGateway service = ServiceGateway.NONE;
    Optional<DayView> view = Optional.empty();
    Optional<Panel> panel = Optional.empty();
    ViewState pages = ViewState.BAR;
    BowlSelection picks = BowlSelection.FIRST;
    FollowedClock clock;
    boolean clockCanBeDriven;
    ScaleStatus scale = ScaleStatus.NONE;
    boolean leaving;

    UiModel(Operator operator, long startNanos) {
        signOn = new SignOnTracker(operator, () -> service, startNanos);
        setup = new SetupTracker(() -> service);
        clock = new FollowedClock(Instant.EPOCH, startNanos, 0);
        link = new LinkTracker(startNanos);
    }

    /** What to draw at a monotonic reading. */
    UiState state(long nanos) {
        var state = new UiState(
                view,
                new UiState.ClockReading(clock.at(nanos), nanos, clock.ratePermille(), clockCanBeDriven),
                link.line(nanos),
                signOn.operator(),
                picks,
                Optional.empty(),
                notices.all(),
                notices.told(),
                pages,
                view.map(day -> alarms.list(day.alarms())).orElse(AlarmList.NONE),
                scale);
        return state.withPanel(panel.map(open -> open.overlay(state)));
    }

    /** Looks at the alarms of the newest view. */
    void lookAtAlarms(long nanos) {
        if (link.everHeard()) view.ifPresent(day -> alarms.look(day.alarms(), clock.at(nanos), nanos));
    }

    /** A reading of the scale; a weight may be taken once it is at rest. */
    void hear(ScaleReading reading, long nanos) {
        weight.take(reading, nanos);
        scale = new ScaleStatus(words(reading), weight.milligrams(), weight.turn());
    }

    private String words(ScaleReading reading) {
        if (reading instanceof ScaleReading.Unusable trouble) return trouble.sentence();
        String state = weight.milligrams().isPresent() ? " g at rest" : " g, not yet at rest";
        return "scale " + WeightText.grams(((ScaleReading.Weight) reading).milligrams()) + state;
    }
}
