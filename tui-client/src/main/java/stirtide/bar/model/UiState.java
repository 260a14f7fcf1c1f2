package stirtide.bar.model;

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
import stirtide.events.view.DayView;

/**
 * Everything a picture is drawn from; the same scene gives the same picture.
 *
 * @param view the day, empty before the first message
 * @param now the salon's clock
 * @param nanos monotonic reading the scene was made at
 * @param ratePermille speed of the salon's clock in thousandths, 1000 is real
 * @param clockCanBeDriven whether the service lets the clock be driven
 * @param link the way to the service
 * @param operator who works here
 * @param picks picked rows
 * @param panel panel over the view
 * @param notices lines for the person, newest last
 * @param pages which view is shown and what is picked in the other views
 * @param board alarms as this terminal shows them
 * @param scale what the scale shows
 */
public record UiState(
        Optional<DayView> view,
        Instant now,
        long nanos,
        int ratePermille,
        boolean clockCanBeDriven,
        LinkStatus link,
        Operator operator,
        BowlSelection picks,
        Optional<Panel> panel,
        List<Notice> notices,
        ViewState pages,
        AlarmList board,
        ScaleStatus scale) {
    /** Minutes of life from which on a bowl counts as low. */
    public static final int LOW_LIFE_MINUTES = 5;

    /** The bar of a picture, with its alarms one a row. */
    public UiState(
            Optional<DayView> view,
            Instant now,
            long nanos,
            int ratePermille,
            boolean clockCanBeDriven,
            LinkStatus link,
            Operator operator,
            BowlSelection picks,
            Optional<Panel> panel,
            List<Notice> notices) {
        this(
                view,
                now,
                nanos,
                ratePermille,
                clockCanBeDriven,
                link,
                operator,
                picks,
                panel,
                notices,
                ViewState.BAR,
                view.map(day -> AlarmList.of(day.alarms())).orElse(AlarmList.NONE),
                ScaleStatus.NONE);
    }

    /** The same in another view. */
    public UiState with(ViewState other) {
        return new UiState(
                view,
                now,
                nanos,
                ratePermille,
                clockCanBeDriven,
                link,
                operator,
                picks,
                panel,
                notices,
                other,
                board,
                scale);
    }

    /** The salon's zone. */
    public ZoneId zone() {
        return view.map(day -> ZoneId.of(day.zone())).orElse(ZoneOffset.UTC);
    }

    /** The keys that work at a place. */
    public List<KeyBinding> keys(KeyContext place) {
        return KeyTable.of(place, mayWrite(), clockCanBeDriven).stream()
                .filter(binding -> !pages.stays() || binding.action() != KeyAction.LEAVE)
                .toList();
    }

    /** Whether commands may be sent. */
    public boolean mayWrite() {
        return operator.mayWrite();
    }

    /** Name of a person as the salon writes it, the id when nobody of that id is at work. */
    public String name(String personId) {
        return view.stream()
                .flatMap(day -> day.people().stream())
                .filter(person -> person.personId().equals(personId))
                .map(DayView.PersonCard::name)
                .findFirst()
                .orElse(personId);
    }

    /** Whether a working life is over. */
    public boolean isPast(DayView.LiveBowl bowl) {
        return !now.isBefore(bowl.lifeEnds());
    }

    /** Whether little of a working life is left. */
    public boolean isLow(DayView.LiveBowl bowl) {
        return !isPast(bowl)
                && Duration.between(now, bowl.lifeEnds()).compareTo(Duration.ofMinutes(LOW_LIFE_MINUTES)) <= 0;
    }
}
