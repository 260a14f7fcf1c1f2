package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import stirtide.events.command.DayCommand;
import stirtide.events.command.DayCommand.BeginBowl;
import stirtide.events.command.DayCommand.HandOverBowl;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.command.DayCommand.WeighBowl;
import stirtide.events.day.Booking;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;

/** A day that is played step by step: the test language of this package. */
public final class Scene {
    public Day day = Day.UNOPENED;
    public Instant now = Given.at("08:00");
    public String actor = "ilka";
    public final List<StoredEvent> log = new ArrayList<>();
    private int commands;

    /** The day of the tests with these bookings. */
    public static Scene open(Booking... bookings) {
        return new Scene().does(new OpenDay(Given.setup(), List.of(bookings)));
    }

    /** Two services of foils at 10:00 and 10:30, with a bowl planned for each. */
    public static Scene planned() {
        return open(Given.booking("one", "full", 1, "10:00"), Given.booking("two", "foils", 2, "10:30"))
                .plans(Given.planned("1a", 1, "09:54", "10:00"), Given.planned("2a", 2, "10:24", "10:30"));
    }

    /** The same, with bowl 1a begun at 09:54 by Bo. */
    public static Scene begun() {
        return planned().at("09:54").does(new BeginBowl("1a", "bo"));
    }

    /** The same, with bowl 1a at its chair from 10:00 and service 1 started. */
    public static Scene atChair() {
        return begun().at("09:58")
                .does(weigh("1a", 30_000, 60_000))
                .at("10:00")
                .does(new DayCommand.StartService(1))
                .does(new HandOverBowl("1a"));
    }

    public static WeighBowl weigh(String bowl, int lightener, int developer) {
        return new WeighBowl(bowl, lightener, List.of(new DeveloperPart("dev-9", developer)));
    }

    public Scene at(String clock) {
        now = Given.at(clock);
        return this;
    }

    public Scene as(String person) {
        actor = person;
        return this;
    }

    public Decision ask(DayCommand command) {
        return Decider.decide(day, command, new CommandContext(now, actor));
    }

    public Scene does(DayCommand command) {
        var decision = ask(command);
        assertThat(decision).as(command.toString()).isInstanceOf(Decision.Accepted.class);
        commands++;
        ((Decision.Accepted) decision).events().forEach(event -> append(event, actor, "command-" + commands));
        return this;
    }

    public Scene plans(PlannedBowl... bowls) {
        return append(new DayEvent.PlanDrawn(Given.plan(day.revision(), day.time(), bowls)), StoredEvent.SERVICE, "");
    }

    public Scene ticks() {
        Ticker.due(day, now).forEach(event -> append(event, StoredEvent.SERVICE, ""));
        return this;
    }

    public Scene append(DayEvent event, String by, String commandId) {
        var stored = new StoredEvent("e-" + (log.size() + 1), Given.DAY, day.revision() + 1, now, by, commandId, event);
        log.add(stored);
        day = Evolver.evolve(day, stored);
        return this;
    }

    public DayEvent newest() {
        return log.get(log.size() - 1).event();
    }

    /** Asserts that a command is refused with a code, by a sentence that says more than the code. */
    public Refusal refused(DayCommand command, String code) {
        var before = day;
        var decision = ask(command);
        assertThat(decision).as(command.toString()).isInstanceOf(Decision.Refused.class);
        var refusal = ((Decision.Refused) decision).refusal();
        assertThat(refusal.code()).isEqualTo(code);
        assertThat(refusal.sentence()).endsWith(".").contains(" ");
        assertThat(day).isSameAs(before);
        return refusal;
    }
}
