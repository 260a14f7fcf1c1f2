package stirtide.planner.service;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stirtide.events.day.Booking;
import stirtide.events.json.ContractJson;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.SalonMemory;
import stirtide.events.setup.UseHistory;
import stirtide.events.view.SetupView;
import stirtide.planner.day.setup.SetupChangeRules;
import stirtide.planner.day.setup.SetupGaps;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;
import stirtide.planner.http.DayOperations.QueryAnswer;
import stirtide.planner.http.DayOperations.ShownDay;
import stirtide.planner.http.DayOperations.View;
import stirtide.planner.salonfiles.export.SetupFiles;
import stirtide.planner.views.DayViews;
import stirtide.planner.views.GramsViews;
import stirtide.planner.views.PourAdvices;
import stirtide.planner.views.SwatchViews;
import stirtide.planner.views.VisitsViews;

/** Answers to questions about a day, as the contract writes them. */
final class DayQueries {
    private DayQueries() {}

    static ShownDay view(Day day, Instant now, int ratePermille) {
        return shown(day, DayViews.of(day, now, ratePermille));
    }

    /** A view that does not depend on the time. */
    static ShownDay show(Day day, View view) {
        return switch (view) {
            case SETUP -> setup(day);
            case GRAMS -> shown(day, GramsViews.of(day));
            case SWATCHES -> shown(day, SwatchViews.of(day));
            case DAY -> throw new IllegalArgumentException("the view of the day depends on the time");
        };
    }

    private static ShownDay setup(Day day) {
        DaySetup inForce = SetupChangeRules.inForce(day).with(UseHistory.NONE);
        List<Booking> bookings = day.services().stream()
                .filter(ServiceState::standing)
                .map(ServiceState::booking)
                .toList();
        return shown(
                day,
                new SetupView(
                        day.revision(),
                        inForce,
                        SetupGaps.of(inForce),
                        SetupFiles.of(withRules(inForce, day), bookings)));
    }

    /** Pins and resets in force and the fraction a manager has set: part of what a next day is to begin with. */
    private static DaySetup withRules(DaySetup inForce, Day day) {
        var rules = day.ledger().rules();
        var fraction = day.ledger().fractionPermille();
        if (rules.isEmpty() && fraction.isEmpty()) return inForce;
        var memory = new SalonMemory(List.of(), List.of(), List.of(), fraction);
        return inForce.with(new UseHistory(List.of(), rules, Optional.of(memory)));
    }

    private static ShownDay shown(Day day, Object view) {
        return new ShownDay(day.revision(), ContractJson.write(view));
    }

    static QueryAnswer nextPour(Day day, String bowl, String poured) {
        return day.bowl(bowl)
                .filter(BowlState::mixable)
                .<QueryAnswer>map(
                        known -> new QueryAnswer.Found(ContractJson.write(PourAdvices.of(day, known, poured))))
                .orElseGet(() -> new QueryAnswer.Refused(
                        "BOWL_NOT_AT_BAR",
                        "Bowl " + bowl + " is not being mixed. Begin it first; one at its chair is poured no more."));
    }

    static QueryAnswer visits(Day day, int service, Optional<LocalDate> first, Optional<LocalDate> second) {
        return day.service(service)
                .<QueryAnswer>map(
                        known -> new QueryAnswer.Found(ContractJson.write(VisitsViews.of(day, known, first, second))))
                .orElseGet(() -> new QueryAnswer.Refused(
                        "SERVICE_UNKNOWN",
                        "There is no service " + service + ". Accepted: 1 to "
                                + day.services().size() + "."));
    }
}
