package stirtide.planner.check.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import stirtide.planner.planning.floor.BowlAssignment;
import stirtide.planner.planning.floor.FloorDay;
import stirtide.planner.planning.floor.FloorMix;

/** The rules of what services share: people, scales, bowls, basins and chairs. */
final class SharedUseCheck {
    private record Use(int from, int to) {}

    private final FloorDay day;
    private final List<WorkedService> worked;
    private final List<String> faults;

    SharedUseCheck(FloorDay day, List<WorkedService> worked, List<String> faults) {
        this.day = day;
        this.worked = worked;
        this.faults = faults;
    }

    void check() {
        assistants();
        things();
        groups(service -> service.service().stylist()).forEach(this::stylist);
        groups(service -> service.service().chair()).forEach(this::chair);
    }

    private FloorMix mix(WorkedService service, BowlAssignment bowl) {
        return day.mixes().get(service.zone(service.zoneOf(bowl.from())).mix());
    }

    private Use rinse(WorkedService service) {
        return new Use(service.times().rinse(), service.times().rinse() + day.rinseMinutes());
    }

    private void assistants() {
        List<List<Use>> work = new ArrayList<>();
        day.assistants().forEach(one -> work.add(new ArrayList<>()));
        for (WorkedService service : worked) {
            for (BowlAssignment bowl : service.bowls()) {
                int ready = bowl.mixStart() + mix(service, bowl).mixMinutes() + day.handOverMinutes();
                work.get(bowl.assistant()).add(new Use(bowl.mixStart(), ready));
            }
            int rinser = service.times().rinseAssistant();
            if (day.stylistsRinse() ? rinser != -1 : rinser < 0 || rinser >= work.size()) {
                faults.add("rinse assistant: service " + service.number() + " names " + rinser);
            } else if (!day.stylistsRinse()) {
                work.get(rinser).add(rinse(service));
            }
        }
        for (int a = 0; a < work.size(); a++) {
            atMost(1, work.get(a), "assistant");
            for (Use use : work.get(a)) {
                if (day.assistants().get(a).onDuty().stream()
                        .noneMatch(span -> span.fromMinute() <= use.from() && use.to() <= span.toMinute())) {
                    faults.add("duty: assistant " + a + " is off duty during " + use);
                }
            }
        }
    }

    private void things() {
        List<Use> scales = new ArrayList<>();
        List<Use> basins = new ArrayList<>();
        List<List<Use>> bowls = new ArrayList<>();
        day.bowlSizes().forEach(size -> bowls.add(new ArrayList<>()));
        for (WorkedService service : worked) {
            basins.add(rinse(service));
            for (BowlAssignment bowl : service.bowls()) {
                scales.add(new Use(
                        bowl.mixStart(), bowl.mixStart() + mix(service, bowl).mixMinutes()));
                int over = service.at(bowl.to() - 1) + 1;
                bowls.get(bowl.size()).add(new Use(bowl.mixStart(), over + day.washMinutes()));
            }
        }
        atMost(day.scales(), scales, "scales");
        atMost(day.basins(), basins, "basins");
        for (int z = 0; z < bowls.size(); z++) {
            atMost(day.bowlSizes().get(z).count(), bowls.get(z), "stock");
        }
    }

    /** Where most are in use, one begins: looking at the beginnings is enough. */
    private void atMost(int count, List<Use> uses, String rule) {
        for (Use use : uses) {
            long now = uses.stream()
                    .filter(other -> other.from() <= use.from() && use.from() < other.to())
                    .count();
            if (now > count) {
                faults.add(rule + ": " + now + " of " + count + " in use at " + use.from());
                return;
            }
        }
    }

    private Map<Integer, List<WorkedService>> groups(ToIntFunction<WorkedService> key) {
        Map<Integer, List<WorkedService>> groups = new TreeMap<>();
        worked.stream()
                .sorted(Comparator.<WorkedService>comparingInt(
                                one -> one.service().bookedMinute())
                        .thenComparingInt(WorkedService::number))
                .forEach(one -> groups.computeIfAbsent(key.applyAsInt(one), k -> new ArrayList<>())
                        .add(one));
        return groups;
    }

    private void stylist(int stylist, List<WorkedService> services) {
        List<Use> uses = new ArrayList<>();
        for (int i = 0; i < services.size(); i++) {
            uses.add(new Use(services.get(i).at(0), services.get(i).end()));
            if (day.stylistsRinse()) {
                uses.add(rinse(services.get(i)));
            }
            if (i > 0 && services.get(i).at(0) < services.get(i - 1).at(0)) {
                faults.add("stylist order: service " + services.get(i).number());
            }
        }
        atMost(1, uses, "stylist");
    }

    private void chair(int chair, List<WorkedService> services) {
        for (int i = 1; i < services.size(); i++) {
            int start = services.get(i).at(0);
            if (start < services.get(i - 1).at(0)) {
                faults.add("chair order: service " + services.get(i).number());
            } else if (start < services.get(i - 1).times().rinse()) {
                faults.add("chair: " + chair + " is taken when service "
                        + services.get(i).number() + " begins");
            }
        }
    }
}
