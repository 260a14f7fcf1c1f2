package stirtide.planner.planning.whatif;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.command.DayCommand.BookService;
import stirtide.events.day.Booking;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlanFigures;
import stirtide.events.plan.PlannedService;
import stirtide.events.plan.WalkInAdvice;
import stirtide.planner.day.Decider;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;

/** Looks for the earliest start of a client without a booking, at a chair that is free, so that nobody waits longer. */
record WalkInSearch(BaselinePlan present, ServiceTask client) {
    private static final int STEP_MINUTES = 5;
    private static final String ASKER = "what-if";

    static WhatIfAnswer answer(BaselinePlan present, WhatIfQuestion.WalkIn wish) {
        Instant now = present.question().instantOf(present.nowMinute());
        Booking booking = new Booking(
                ASKER + " " + present.day().services().size(),
                wish.menuId(),
                wish.chair(),
                now,
                "",
                wish.length(),
                wish.density(),
                Optional.empty(),
                0,
                0,
                Optional.empty(),
                Optional.empty());
        Decision decision = Decider.decide(present.day(), new BookService(booking), new CommandContext(now, ASKER));
        if (decision instanceof Decision.Refused refused) return new WhatIfAnswer.Refused(refused.refusal());
        ServiceTask client = task(present.day(), ((Decision.Accepted) decision).events(), now);
        return new WhatIfAnswer.WalkIn(new WalkInSearch(present, client).earliest());
    }

    private static ServiceTask task(Day day, List<DayEvent> events, Instant now) {
        Day then = day;
        for (DayEvent event : events)
            then = Evolver.evolve(then, new StoredEvent(ASKER, "", then.revision() + 1, now, ASKER, ASKER, event));
        List<ServiceTask> tasks =
                PlanQuestions.standing(then, now).orElseThrow().services();
        return tasks.get(tasks.size() - 1);
    }

    private WalkInAdvice earliest() {
        int last = present.question().assistants().stream()
                .flatMap(each -> each.onDuty().stream())
                .mapToInt(duty -> duty.to())
                .max()
                .orElse(present.nowMinute());
        int first = (present.nowMinute() + STEP_MINUTES - 1) / STEP_MINUTES * STEP_MINUTES;
        int step = step(last - first);
        for (int start = first; start < last; start += step) {
            List<ServiceTask> services = new ArrayList<>(present.question().services());
            services.add(client.startingAt(start));
            Plan then = present.quick(present.question().withServices(services));
            if (fits(then)) return found(start, WhatIfFigures.of(then), step);
        }
        return new WalkInAdvice(
                present.question().basedOnRevision(),
                Optional.empty(),
                present.figures(),
                Optional.empty(),
                "No start found today at which neither this client nor anybody else waits longer." + looked(step));
    }

    /** Wider on a day of very many services. */
    private int step(int minutes) {
        int starts = present.effort().plans() * STEP_MINUTES;
        return Math.max(1, (minutes + starts - 1) / starts) * STEP_MINUTES;
    }

    private static String looked(int step) {
        return step == STEP_MINUTES ? "" : " The day is large: every " + step + " minutes were looked at.";
    }

    private boolean fits(Plan then) {
        PlanFigures figures = WhatIfFigures.of(then);
        return figures.stylistMixes() <= present.figures().stylistMixes()
                && then.services().stream().allMatch(this::nobodyWaitsLonger)
                && !present.crowds(then, client.service())
                && then.notes().stream().noneMatch(note -> note.service() == client.service());
    }

    private boolean nobodyWaitsLonger(PlannedService service) {
        int before = present.plan().services().stream()
                .filter(each -> each.service() == service.service())
                .mapToInt(PlannedService::waitMinutes)
                .sum();
        return service.waitMinutes() <= before;
    }

    private WalkInAdvice found(int minute, PlanFigures then, int step) {
        Instant start = present.question().instantOf(minute);
        return new WalkInAdvice(
                present.question().basedOnRevision(),
                Optional.of(start),
                present.figures(),
                Optional.of(then),
                "From " + present.time().clock(start) + " nobody waits longer: "
                        + WhatIfFigures.difference(present.figures(), then) + "." + looked(step));
    }
}
