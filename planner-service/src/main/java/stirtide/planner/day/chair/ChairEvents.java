package stirtide.planner.day.chair;

import static stirtide.planner.day.state.EventRule.PlanRelevance.REPLAN;
import static stirtide.planner.day.state.Recheck.byCommand;

import java.util.List;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent.SectionRinsed;
import stirtide.events.day.DayEvent.ServiceStarted;
import stirtide.events.day.DayEvent.ZoneFinished;
import stirtide.planner.day.state.EventRule;

/** Services that start, zones that are finished and sections that are rinsed. */
public final class ChairEvents {
    /** A rule for each event of this folder. */
    public static final List<EventRule<?>> RULES = List.of(
            new EventRule<ServiceStarted>(
                    ServiceStarted.class,
                    REPLAN,
                    (day, e, stored) ->
                            day.with(day.requireService(e.service()).withStartedAt(Optional.of(stored.time()))),
                    e -> "started service " + e.service(),
                    byCommand(e -> new DayCommand.StartService(e.service()))),
            new EventRule<ZoneFinished>(
                    ZoneFinished.class,
                    REPLAN,
                    (day, e, stored) -> day.with(day.requireService(e.service()).zoneDone(e.zone(), stored.time())),
                    e -> "finished " + e.zone() + " of service " + e.service(),
                    byCommand(e -> new DayCommand.FinishZone(e.service(), e.zone()))),
            new EventRule<SectionRinsed>(
                    SectionRinsed.class,
                    REPLAN,
                    (day, e, stored) -> day.with(day.requireService(e.service()).rinsed(e.section(), stored.time())),
                    e -> "rinsed section " + e.section() + " of service " + e.service(),
                    byCommand(e -> new DayCommand.RinseSection(e.service(), e.section()))));

    private ChairEvents() {}
}
