package stirtide.bar.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyBinding;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.text.TimeText;
import stirtide.events.view.DayView;

/**
 * Everything a picture is drawn from; the same state gives the same picture.
 *
 * @param view the day, empty before the first message
 * @param clock the salon's clock
 * @param link the connection to the service
 * @param operator who works here
 * @param picks selected bowls
 * @param panel what is drawn over the view
 * @param notices lines for the person, newest last
 * @param told lasting lines of late, oldest first, to be read again
 * @param pages which view is shown and what is selected in the other views
 * @param alarms alarms as this terminal shows them
 * @param scale what the scale shows
 */
@RecordBuilder
public record UiState(
        Optional<DayView> view,
        ClockReading clock,
        LinkStatus link,
        Operator operator,
        BowlSelection picks,
        Optional<Overlay> panel,
        List<Notice> notices,
        List<String> told,
        ViewState pages,
        AlarmList alarms,
        ScaleStatus scale)
        implements UiStateBuilder.With {
    /** Minutes of life from which on a bowl counts as low. */
    public static final int LOW_LIFE_MINUTES = 5;

    /**
     * The salon's clock.
     *
     * @param now its time
     * @param nanos monotonic reading at that time
     * @param ratePermille its speed in thousandths, 1000 is real
     * @param canBeDriven whether the service lets it be driven
     */
    public record ClockReading(Instant now, long nanos, int ratePermille, boolean canBeDriven) {}

    /** The bar without a panel, the alarms one a row. */
    public static UiState of(Optional<DayView> view, ClockReading clock, LinkStatus link, Operator operator) {
        return new UiState(
                view,
                clock,
                link,
                operator,
                BowlSelection.FIRST,
                Optional.empty(),
                List.of(),
                List.of(),
                ViewState.BAR,
                view.map(day -> AlarmList.of(day.alarms())).orElse(AlarmList.NONE),
                ScaleStatus.NONE);
    }

    /** The salon's time. */
    public Instant now() {
        return clock.now();
    }

    /** Monotonic reading the state was made at. */
    public long nanos() {
        return clock.nanos();
    }

    /** Speed of the salon's clock in thousandths, 1000 is real. */
    public int ratePermille() {
        return clock.ratePermille();
    }

    /** The salon's zone. */
    public ZoneId zone() {
        return view.map(day -> ZoneId.of(day.zone())).orElse(ZoneOffset.UTC);
    }

    /** A time of the day in the salon's zone: {@code 11:44}. */
    public String minute(Instant instant) {
        return TimeText.minute(instant, zone());
    }

    /** The keys that work in a context. */
    public List<KeyBinding> keys(KeyContext context) {
        return KeyTable.of(context, mayWrite(), clock.canBeDriven()).stream()
                .filter(binding -> !pages.stays() || binding.action() != KeyAction.LEAVE)
                .toList();
    }

    /** Whether commands may be sent. */
    public boolean mayWrite() {
        return operator.mayWrite();
    }

    /** Name of a person as the salon writes it, the id when no person of that id is at work. */
    public String name(String personId) {
        return view.map(day -> day.personName(personId)).orElse(personId);
    }

    /** Whether a working life is over. */
    public boolean isPast(DayView.LiveBowl bowl) {
        return !now().isBefore(bowl.lifeEnds());
    }

    /** Whether little of a working life is left. */
    public boolean isLow(DayView.LiveBowl bowl) {
        return !isPast(bowl)
                && Duration.between(now(), bowl.lifeEnds()).compareTo(Duration.ofMinutes(LOW_LIFE_MINUTES)) <= 0;
    }
}
