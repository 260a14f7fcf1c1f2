package stirtide.planner.day.question;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.planner.day.booking.FormulaRun;
import stirtide.planner.day.chair.Rinses;
import stirtide.planner.day.chair.ServiceProgress;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;
import stirtide.planner.planning.search.PlanQuestion.AppliedZone;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;

/** What is left of one service for the planner. */
final class ServiceTasks {
    private ServiceTasks() {}

    /** Empty when everything is applied and rinsed. */
    static Optional<ServiceTask> of(Day day, ServiceState service, LiveSupplies supplies) {
        var progress = ServiceProgress.of(day, service, day.time());
        var runs = runs(day, service, supplies, progress);
        var processing = processing(day, service, supplies, progress);
        if (runs.isEmpty() && processing.isEmpty()) return Optional.empty();
        return Optional.of(new ServiceTask(
                service.service(),
                service.booking().chair(),
                service.booking().stylistId(),
                service.startedAt().isPresent(),
                startMinute(service, supplies),
                service.bowls().size(),
                runs,
                processing));
    }

    /** The last zone finished is where a started service goes on from. */
    private static int startMinute(ServiceState service, LiveSupplies supplies) {
        var time = supplies.time();
        if (service.startedAt().isEmpty())
            return Math.max(time.minuteUp(service.booking().start()), supplies.nowMinute());
        int done = service.zonesDone().size();
        return time.minuteUp(
                done == 0
                        ? service.startedAt().get()
                        : service.zonesDone().get(done - 1).at());
    }

    private static List<RunTask> runs(Day day, ServiceState service, LiveSupplies supplies, ServiceProgress progress) {
        var tasks = new ArrayList<RunTask>();
        int done = progress.done().size();
        for (var run : FormulaRun.of(day.menuEntry(service))) {
            int from = Math.max(0, done - run.firstZone());
            if (from >= run.zones().size()) continue;
            var needs = RunNeeds.of(day, service, run, progress, done);
            var zones = new ArrayList<ZoneTask>();
            for (int i = from; i < run.zones().size(); i++)
                zones.add(zone(
                        run.zones().get(i),
                        needs.zoneMilligrams().get(i - from),
                        run.firstZone() + i == done,
                        supplies,
                        progress));
            var first = run.zones().get(0);
            tasks.add(new RunTask(
                    run.number(),
                    first.lightenerId(),
                    first.strengthHundredths(),
                    first.ratioThousandths(),
                    zones,
                    supplies.of(service, run.number(), progress),
                    needs.reserveMilligrams()));
        }
        return tasks;
    }

    private static ZoneTask zone(
            MenuZone zone, int need, boolean atHand, LiveSupplies supplies, ServiceProgress progress) {
        int elapsed = atHand ? progress.elapsedMinutes() : 0;
        var begun = atHand ? progress.begunAt() : Optional.<Instant>empty();
        return new ZoneTask(
                zone.zone(),
                zone.technique(),
                begun.isPresent() ? 0 : zone.gapMinutes(),
                zone.applyMinutes() - elapsed,
                need,
                zone.processMinutes(),
                zone.section(),
                begun.map(supplies.time()::minuteDown));
    }

    private static List<AppliedZone> processing(
            Day day, ServiceState service, LiveSupplies supplies, ServiceProgress progress) {
        var time = supplies.time();
        var zones = new ArrayList<AppliedZone>();
        for (var done : progress.done()) {
            if (Rinses.rinsed(day, service, progress, done.zone().section(), day.time())) continue;
            zones.add(new AppliedZone(
                    done.zone().zone(),
                    done.zone().technique(),
                    done.zone().lightenerId(),
                    time.minuteDown(done.begin()),
                    time.minuteUp(done.end()),
                    done.zone().processMinutes(),
                    done.zone().section()));
        }
        return zones;
    }
}
