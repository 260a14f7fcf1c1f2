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
import stirtide.planner.http.DayOperations.PourAnswer;
import stirtide.planner.http.DayOperations.ShownDay;
import stirtide.planner.http.DayOperations.VisitsAnswer;
import stirtide.planner.salonfiles.export.SetupFiles;
import stirtide.planner.views.DayViews;
import stirtide.planner.views.GramsViews;
import stirtide.planner.views.PourAdvices;
import stirtide.planner.views.SwatchViews;
import stirtide.planner.views.VisitsViews;

/** What a day is asked, as the contract writes it. */
final class DayQueries {
    private DayQueries() {}

    static ShownDay view(Day day, Instant now, int ratePermille) {
        return shown(day, DayViews.of(day, now, ratePermille));
    }

    static ShownDay grams(Day day) {
        return shown(day, GramsViews.of(day));
    }

    static ShownDay swatches(Day day) {
        return shown(day, SwatchViews.of(day));
    }

    static ShownDay setup(Day day) {
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

    static PourAnswer nextPour(Day day, String bowl, String poured) {
        return day.bowl(bowl)
                .filter(BowlState::mixable)
                .<PourAnswer>map(
                        known -> new PourAnswer.Advised(ContractJson.write(PourAdvices.of(day, known, poured))))
                .orElseGet(() -> new PourAnswer.Refused(
                        "BOWL_NOT_AT_BAR",
                        "Bowl " + bowl + " is not being mixed. Begin it first; one at its chair is poured no more."));
    }

    static VisitsAnswer visits(Day day, int service, Optional<LocalDate> first, Optional<LocalDate> second) {
        return day.service(service)
                .<VisitsAnswer>map(
                        known -> new VisitsAnswer.Told(ContractJson.write(VisitsViews.of(day, known, first, second))))
                .orElseGet(() -> new VisitsAnswer.Refused(
                        "SERVICE_UNKNOWN",
                        "There is no service " + service + ". Accepted: 1 to "
                                + day.services().size() + "."));
    }
}
