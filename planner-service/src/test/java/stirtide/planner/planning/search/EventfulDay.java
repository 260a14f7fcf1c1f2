package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import stirtide.events.plan.Plan;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.Minutes;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;

/** A day on which one thing after the other comes between. */
final class EventfulDay {
    private static final LivedDay.Odds WRONG_WEIGHTS = new LivedDay.Odds(0, 0, 0, 1, 0, 0);

    private final Random random;
    private final LivedDay day;
    private final List<ServiceTask> menu;
    private int lastNumber;
    private boolean somebodyLeft;

    /** What can happen. */
    enum Happening {
        DELAY,
        CANCELLATION,
        WALK_IN,
        WRONG_WEIGHT,
        LEAVING
    }

    EventfulDay(long seed, PlanQuestion morning) {
        random = new Random(seed);
        day = new LivedDay(seed, morning);
        menu = morning.services();
        lastNumber = menu.size();
    }

    PlanQuestion question() {
        return day.question();
    }

    /** Lets minutes pass by the plan on show, then lets something happen. Says what did. */
    Happening next(Plan plan, int minutes) {
        int roll = random.nextInt(20);
        Happening wanted = roll < 8
                ? Happening.DELAY
                : roll < 11
                        ? Happening.CANCELLATION
                        : roll < 15 ? Happening.WALK_IN : roll < 19 ? Happening.WRONG_WEIGHT : Happening.LEAVING;
        day.pass(plan, minutes, wanted == Happening.WRONG_WEIGHT ? WRONG_WEIGHTS : LivedDay.Odds.NOTHING);
        List<ServiceTask> waiting =
                question().services().stream().filter(task -> !task.started()).toList();
        if (wanted == Happening.WRONG_WEIGHT) return wanted;
        if (wanted == Happening.LEAVING && !somebodyLeft) return leave();
        if (wanted == Happening.WALK_IN || waiting.isEmpty() || wanted == Happening.LEAVING) return walkIn();
        ServiceTask one = waiting.get(random.nextInt(Math.min(4, waiting.size())));
        List<ServiceTask> services = new ArrayList<>(question().services());
        services.remove(one);
        if (wanted == Happening.DELAY) {
            services.add(one.startingAt(Math.max(question().nowMinute(), one.startMinute()) + 5 + random.nextInt(16)));
            services.sort(java.util.Comparator.comparingInt(ServiceTask::service));
        }
        day.now(question().withServices(services));
        return wanted;
    }

    private Happening leave() {
        somebodyLeft = true;
        int now = question().nowMinute();
        List<Assistant> people = new ArrayList<>(question().assistants());
        Assistant gone = people.get(random.nextInt(people.size()));
        List<Minutes> duty = new ArrayList<>();
        for (Minutes each : gone.onDuty())
            if (each.from() < now + 60 && now + 60 < each.to() && random.nextBoolean())
                duty.add(new Minutes(each.from(), Math.max(each.from() + 1, now)));
            else if (each.to() <= now || each.from() > now + 60) duty.add(each);
        people.set(
                people.indexOf(gone),
                new Assistant(gone.personId(), gone.name(), duty, gone.busyUntilMinute(), gone.busyScaleId()));
        day.now(question().withAssistants(people));
        return Happening.LEAVING;
    }

    private Happening walkIn() {
        ServiceTask like = menu.get(random.nextInt(menu.size()));
        int start = question().nowMinute() + random.nextInt(30);
        List<ServiceTask> services = new ArrayList<>(question().services());
        services.add(
                new ServiceTask(++lastNumber, lastNumber, Optional.empty(), false, start, 0, like.runs(), List.of()));
        day.now(question().withServices(services));
        return Happening.WALK_IN;
    }
}
