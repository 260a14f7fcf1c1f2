package stirtide.planner.day.state;

import java.util.function.Function;

/** The service a command names: decides about it, or refuses what cannot be decided about. */
public final class NamedService {
    private NamedService() {}

    /** Decides about a service that exists. */
    public static Decision known(Day day, int number, Function<ServiceState, Decision> rule) {
        int known = day.services().size();
        return day.service(number)
                .map(rule)
                .orElseGet(() -> Decision.refuse(
                        "SERVICE_UNKNOWN",
                        "There is no service " + number + ". "
                                + (known == 0
                                        ? "No service is booked yet. Book it first."
                                        : "Accepted: 1 to " + known + ".")));
    }

    /** Decides about a service that exists and is not cancelled. */
    public static Decision standing(Day day, int number, Function<ServiceState, Decision> rule) {
        return known(
                day,
                number,
                service -> service.standing()
                        ? rule.apply(service)
                        : Decision.refuse(
                                "SERVICE_CANCELLED",
                                "Service " + number + " is cancelled. Book it anew if the client comes after all."));
    }
}
