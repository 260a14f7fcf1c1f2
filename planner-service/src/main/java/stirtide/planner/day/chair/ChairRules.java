package stirtide.planner.day.chair;

import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.planner.day.booking.BookingRules;
import stirtide.planner.day.state.Bookings;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.ServiceState;

/** What happens at a chair: the client sits down, zones are applied one after the other. */
public final class ChairRules {
    private ChairRules() {}

    /** Nobody sits down the day before: what such a start would plan is late from then on, all night. */
    public static Decision start(Day day, DayCommand.StartService command, CommandContext facts) {
        var found = day.service(command.service());
        if (found.isEmpty()) return BookingRules.noService(day, command.service());
        var service = found.get();
        if (!service.standing()) return BookingRules.cancelled(service);
        if (service.startedAt().isPresent())
            return Decision.refuse(
                    "SERVICE_STARTED",
                    "Service " + service.service() + " started at "
                            + DayTime.of(day.opened()).clock(service.startedAt().get())
                            + " already. A service starts once.");
        var setup = day.opened();
        if (facts.now().isBefore(DayTime.of(setup).dayStart()))
            return Decision.refuse(
                    "DAY_NOT_BEGUN",
                    "This is the day of " + setup.date() + ", and it is not yet that date in "
                            + setup.salon().zone() + ". Start the service on its day, or open the day of today.");
        return Decision.accept(new DayEvent.ServiceStarted(service.service()));
    }

    public static Decision finishZone(Day day, DayCommand.FinishZone command) {
        var found = day.service(command.service());
        if (found.isEmpty()) return BookingRules.noService(day, command.service());
        var service = found.get();
        if (!service.standing()) return BookingRules.cancelled(service);
        if (service.startedAt().isEmpty())
            return Decision.refuse(
                    "SERVICE_NOT_STARTED",
                    "Service " + service.service() + " has not started. Start it before a zone is finished.");
        if (applied(day, service))
            return Decision.refuse(
                    "SERVICE_APPLIED",
                    "All zones of service " + service.service() + " are finished already. Nothing is left to finish.");
        var next = Bookings.entry(day, service)
                .zones()
                .get(service.zonesDone().size())
                .zone();
        if (!next.equals(command.zone()))
            return Decision.refuse(
                    "ZONE_NOT_NEXT",
                    "\"" + command.zone() + "\" is not the zone at hand of service " + service.service()
                            + ". Zones are finished in order; accepted: " + next + ".");
        return Decision.accept(new DayEvent.ZoneFinished(service.service(), next));
    }

    /** A rinse is recorded when it has been: it never has to wait for this, and it is not taken for granted either. */
    public static Decision rinse(Day day, DayCommand.RinseSection command) {
        var found = day.service(command.service());
        if (found.isEmpty()) return BookingRules.noService(day, command.service());
        var service = found.get();
        if (!service.standing()) return BookingRules.cancelled(service);
        var sections = Rinses.sections(day, service);
        if (!sections.contains(command.section()))
            return Decision.refuse(
                    "SECTION_UNKNOWN",
                    "Service " + service.service() + " has no section " + command.section() + ". Accepted: "
                            + BookingRules.listed(
                                    sections.stream().map(String::valueOf).toList())
                            + ".");
        var rinsed = service.rinsedAt().get(command.section());
        if (rinsed != null)
            return Decision.refuse(
                    "SECTION_RINSED",
                    "Section " + command.section() + " of service " + service.service() + " was rinsed at "
                            + DayTime.of(day.opened()).clock(rinsed)
                            + " already. A section is rinsed once. Only who recorded it can take that back.");
        var open = Rinses.unapplied(day, service, command.section());
        if (!open.isEmpty())
            return Decision.refuse(
                    "SECTION_NOT_APPLIED",
                    "Rinse when the hair asks for it. The record takes the rinse of a section once its zones are finished:"
                            + " finish " + BookingRules.listed(open) + " of service " + service.service()
                            + " first, or cancel the service.");
        return Decision.accept(new DayEvent.SectionRinsed(service.service(), command.section()));
    }

    /** Whether all zones of a service are applied. */
    public static boolean applied(Day day, ServiceState service) {
        return service.zonesDone().size()
                >= Bookings.entry(day, service).zones().size();
    }
}
