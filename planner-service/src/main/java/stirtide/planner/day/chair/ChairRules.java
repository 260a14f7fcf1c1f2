package stirtide.planner.day.chair;

import java.util.List;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.CommandRule;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.NamedService;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.day.state.ServiceState;

/** What happens at a chair: the client sits down, zones are applied one after the other. */
public final class ChairRules {
    /** A rule for each command of this folder. */
    public static final List<CommandRule<?>> RULES = List.of(
            CommandRule.of(DayCommand.StartService.class, ChairRules::start),
            CommandRule.of(DayCommand.FinishZone.class, ChairRules::finishZone),
            CommandRule.of(DayCommand.RinseSection.class, ChairRules::rinse));

    private ChairRules() {}

    /** A service does not start the day before: what such a start would plan is late from then on, all night. */
    private static Decision start(Day day, DayCommand.StartService command, CommandContext context) {
        return NamedService.standing(day, command.service(), service -> startBooked(day, service, context));
    }

    private static Decision startBooked(Day day, ServiceState service, CommandContext context) {
        if (service.startedAt().isPresent())
            return Decision.refuse(
                    "SERVICE_STARTED",
                    "Service " + service.service() + " started at "
                            + DayTime.of(day.opened()).clock(service.startedAt().get())
                            + " already. A service starts once.");
        var setup = day.opened();
        if (context.now().isBefore(DayTime.of(setup).dayStart()))
            return Decision.refuse(
                    "DAY_NOT_BEGUN",
                    "This is the day of " + setup.date() + ", and it is not yet that date in "
                            + setup.salon().zone() + ". Start the service on its day, or open the day of today.");
        return Decision.accept(new DayEvent.ServiceStarted(service.service()));
    }

    private static Decision finishZone(Day day, DayCommand.FinishZone command) {
        return NamedService.standing(day, command.service(), service -> finishNext(day, service, command.zone()));
    }

    private static Decision finishNext(Day day, ServiceState service, String zone) {
        if (service.startedAt().isEmpty())
            return Decision.refuse(
                    "SERVICE_NOT_STARTED",
                    "Service " + service.service() + " has not started. Start it before a zone is finished.");
        if (day.applied(service))
            return Decision.refuse(
                    "SERVICE_APPLIED",
                    "All zones of service " + service.service() + " are finished already. Nothing is left to finish.");
        var next =
                day.menuEntry(service).zones().get(service.zonesDone().size()).zone();
        if (!next.equals(zone))
            return Decision.refuse(
                    "ZONE_NOT_NEXT",
                    "\"" + zone + "\" is not the zone at hand of service " + service.service()
                            + ". Zones are finished in order; accepted: " + next + ".");
        return Decision.accept(new DayEvent.ZoneFinished(service.service(), next));
    }

    /** A rinse is recorded when it has been: it never has to wait for this, and it is not taken for granted either. */
    private static Decision rinse(Day day, DayCommand.RinseSection command) {
        return NamedService.standing(day, command.service(), service -> rinseOne(day, service, command.section()));
    }

    private static Decision rinseOne(Day day, ServiceState service, int section) {
        var sections = Rinses.sections(day, service);
        if (!sections.contains(section))
            return Decision.refuse(
                    "SECTION_UNKNOWN",
                    "Service " + service.service() + " has no section " + section + ". Accepted: "
                            + Refusal.listed(
                                    sections.stream().map(String::valueOf).toList())
                            + ".");
        var rinsed = service.rinsedAt().get(section);
        if (rinsed != null)
            return Decision.refuse(
                    "SECTION_RINSED",
                    "Section " + section + " of service " + service.service() + " was rinsed at "
                            + DayTime.of(day.opened()).clock(rinsed)
                            + " already. A section is rinsed once. Only who recorded it can take that back.");
        var open = Rinses.unapplied(day, service, section);
        if (!open.isEmpty())
            return Decision.refuse(
                    "SECTION_NOT_APPLIED",
                    "Rinse when the hair asks for it. The record takes the rinse of a section once its zones are finished:"
                            + " finish " + Refusal.listed(open) + " of service " + service.service()
                            + " first, or cancel the service.");
        return Decision.accept(new DayEvent.SectionRinsed(service.service(), section));
    }
}
