package stirtide.planner.views;

import java.time.Instant;
import java.util.List;
import stirtide.events.plan.Plan;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Person;
import stirtide.events.view.BookingChoices;
import stirtide.events.view.BookingChoices.MenuChoice;
import stirtide.events.view.DayView;
import stirtide.events.view.DayView.ActionCard;
import stirtide.events.view.DayView.PersonCard;
import stirtide.events.view.DayView.QueuedBowl;
import stirtide.events.view.ScaleCard;
import stirtide.events.view.StockCard;
import stirtide.mixing.weighing.ScaleErrors;
import stirtide.planner.day.Alarms;
import stirtide.planner.day.Decider;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.TakeBackRules;
import stirtide.planner.day.setup.People;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.stock.ShelfEvents;
import stirtide.planner.stock.StockReport;

/** Makes the view of a day for terminals. */
public final class DayViews {
    /** Most actions offered to be taken back. */
    private static final int MOST_ACTIONS = 8;

    private DayViews() {}

    /**
     * The view of an opened day.
     *
     * @param now the salon's clock
     * @param clockRatePermille how fast that clock runs, in thousandths
     * @throws IllegalStateException when the day is not opened
     */
    public static DayView of(Day day, Instant now, int clockRatePermille) {
        var setup = day.opened();
        var plan = day.plan();
        return new DayView(
                setup.salon().salonId(),
                setup.salon().name(),
                setup.date(),
                setup.salon().zone(),
                setup.salon().currency(),
                day.revision(),
                now,
                clockRatePermille,
                day.closed(),
                plan.map(Plan::basedOnRevision).orElse(0L),
                people(day, now),
                ServiceCards.of(day, now),
                QueueCards.of(day),
                BowlCards.live(day),
                BowlCards.done(day),
                Alarms.of(day, now),
                plan.map(Plan::waits).orElse(List.of()),
                Notices.of(day),
                plan.map(Plan::totals),
                TotalsCount.of(day),
                actions(day, now),
                plan.map(Plan::changes).orElse(List.of()),
                day.planSettled(),
                day.betterPlanSought(),
                choices(day),
                stock(day),
                scales(day));
    }

    private static List<PersonCard> people(Day day, Instant now) {
        var work = new PeoplesWork(day, now);
        return day.opened().salon().people().stream()
                .map(person -> new PersonCard(
                        person.personId(),
                        person.name(),
                        person.role().name(),
                        People.onDuty(day, person, now),
                        isMixing(day, person),
                        People.shift(day, person),
                        work.of(person.personId())))
                .toList();
    }

    private static boolean isMixing(Day day, Person person) {
        return day.liveBowls().anyMatch(bowl -> bowl.mixing() && bowl.personId().equals(person.personId()));
    }

    private static List<ActionCard> actions(Day day, Instant now) {
        return TakeBackRules.takeable(day, now, MOST_ACTIONS, Decider::decide).stream()
                .map(stored ->
                        new ActionCard(stored.revision(), stored.time(), stored.actor(), Evolver.text(stored.event())))
                .toList();
    }

    private static List<StockCard> stock(Day day) {
        var ahead = QueueCards.of(day).stream().map(QueuedBowl::bowl).toList();
        return StockReport.of(day.opened(), ahead, ShelfEvents.of(day));
    }

    private static List<ScaleCard> scales(Day day) {
        return day.opened().salon().scales().stream()
                .map(scale -> new ScaleCard(scale.scaleId(), scale.weighing(), new ScaleErrors(scale).bands()))
                .toList();
    }

    private static BookingChoices choices(Day day) {
        var menu = day.opened().menu();
        return new BookingChoices(
                menu.entries().stream().map(DayViews::choice).toList(),
                List.copyOf(menu.lengthPermille().keySet()),
                List.copyOf(menu.densityPermille().keySet()),
                day.opened().salon().chairs());
    }

    private static MenuChoice choice(MenuEntry entry) {
        return new MenuChoice(entry.menuId(), entry.name());
    }
}
