package stirtide.planner.day.history;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.PastVisit.PastZone;
import stirtide.planner.day.allowance.ZoneGrams;
import stirtide.planner.day.booking.FormulaRun;
import stirtide.planner.day.bowl.BowlBalance;
import stirtide.planner.day.chair.ServiceProgress;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/** What was really mixed and used for the clients of a day, as a later day remembers it. */
public final class PastVisits {
    private PastVisits() {}

    /** Visits of all clients who have a reference, with the zones that were applied whole and whose bowls are closed. */
    public static List<PastVisit> of(Day day) {
        var visits = new ArrayList<PastVisit>();
        for (var service : day.services()) {
            if (service.booking().clientRef().isBlank()) continue;
            var zones = new ArrayList<PastZone>();
            var progress = ServiceProgress.of(day, service, day.time());
            for (var run : FormulaRun.of(day.menuEntry(service)))
                if (run.firstZone() + run.zones().size() <= progress.done().size())
                    addRun(day, service, run, progress, zones);
            if (!zones.isEmpty())
                visits.add(new PastVisit(
                        day.opened().date(),
                        service.booking().clientRef(),
                        service.booking().menuId(),
                        zones));
        }
        return visits;
    }

    private static void addRun(
            Day day, ServiceState service, FormulaRun run, ServiceProgress progress, List<PastZone> zones) {
        var bowls = service.bowlsOf(run.number());
        if (bowls.stream().anyMatch(BowlState::live)) return;
        var mix = RunMix.of(day, bowls);
        if (mix.isEmpty()) return;
        long all = ZoneGrams.medianMilligrams(day, service, run.zones());
        for (var zone : run.zones()) {
            long share = ZoneGrams.medianMilligrams(day, service, zone);
            int used = (int) (mix.get().usedMilligrams() * share / all);
            if (used > 0)
                zones.add(zone(
                        day,
                        service,
                        zone,
                        mix.get(),
                        (int) (mix.get().mixedMilligrams() * share / all),
                        used,
                        progress));
        }
    }

    private static PastZone zone(
            Day day, ServiceState service, MenuZone zone, RunMix mix, int mixed, int used, ServiceProgress progress) {
        var levels = day.ledger().notes().levels(service.service(), zone.zone());
        long applied = progress.done().stream()
                .filter(done -> done.zone().zone().equals(zone.zone()))
                .mapToLong(done -> Duration.between(done.begin(), done.end()).toMinutes())
                .findFirst()
                .orElse(zone.applyMinutes());
        return new PastZone(
                zone.zone(),
                zone.technique(),
                zone.lightenerId(),
                mix.strengthHundredths(),
                mix.ratioThousandths(),
                mixed,
                used,
                (int) Math.max(1, applied),
                zone.processMinutes(),
                rinsedAfterMinutes(service, zone, progress),
                levels.beforeTenths(),
                levels.afterTenths());
    }

    /** Minutes a zone really processed, where its rinse was recorded. */
    private static Optional<Integer> rinsedAfterMinutes(ServiceState service, MenuZone zone, ServiceProgress progress) {
        return Optional.ofNullable(service.rinsedAt().get(zone.section()))
                .flatMap(rinsed -> progress.done().stream()
                        .filter(done -> done.zone().zone().equals(zone.zone()))
                        .map(done -> (int) Duration.between(done.end(), rinsed).toMinutes())
                        .findFirst());
    }

    /** The bowls of a run that were at the chair, together; they were weighed separately but by one formula. */
    private record RunMix(int strengthHundredths, int ratioThousandths, long mixedMilligrams, long usedMilligrams) {
        static Optional<RunMix> of(Day day, List<BowlState> bowls) {
            long lightener = 0;
            long developer = 0;
            long strong = 0;
            long used = 0;
            for (var bowl : bowls) {
                if (bowl.handedOverAt().isEmpty() || bowl.weighed().isEmpty()) continue;
                var weighed = bowl.weighed().get();
                lightener += weighed.lightenerMilligrams();
                developer += weighed.developerMilligrams();
                for (var part : weighed.developerParts())
                    strong += (long) part.milligrams() * day.opened().strengthHundredths(part.developerId());
                used += BowlBalance.of(day, bowl).appliedMilligrams();
            }
            if (lightener == 0 || developer == 0 || used == 0) return Optional.empty();
            return Optional.of(new RunMix(
                    (int) ((2 * strong + developer) / (2 * developer)),
                    (int) ((2000 * developer + lightener) / (2 * lightener)),
                    lightener + developer,
                    used));
        }
    }
}
