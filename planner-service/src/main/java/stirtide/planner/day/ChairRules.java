package stirtide.planner.day;

import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;

/** What happens at a chair: the client sits down, zones are applied one after the other. */
final class ChairRules {
    private ChairRules() {}

    static Decision start(Day day, DayCommand.StartService command) {
        var found = day.service(command.service());
        if (found.isEmpty()) return BookingRules.noService(day, command.service());
        var service = found.get();
        if (!service.standing()) return BookingRules.cancelled(service);
        if (service.startedAt().isPresent())
            return Decision.refuse(
                    "SERVICE_STARTED",
                    "Service " + service.service() + " started at "
                            + SalonTime.of(day.opened())
                                    .clock(service.startedAt().get())
                            + " already. A service starts once.");
        return Decision.accept(new DayEvent.ServiceStarted(service.service()));
    }

    static Decision finishZone(Day day, DayCommand.FinishZone command) {
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

    /** Whether all zones of a service are applied. */
    static boolean applied(Day day, ServiceState service) {
        return service.zonesDone().size()
                >= Bookings.entry(day, service).zones().size();
    }
}
