package stirtide.planner.day.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.day.OverMixCause;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.day.allowance.ZoneGrams;
import stirtide.planner.day.booking.FormulaRun;
import stirtide.planner.day.bowl.BowlBalance;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/** What the zones of a day used, as a later day learns from it. */
public final class PastUses {
    private static final Optional<OverMixCause> SPILLED = Optional.of(OverMixCause.SPILLED);

    private PastUses() {}

    /** What the zones of a day used: of every run that was applied whole and whose bowls are all closed. */
    public static List<PastUse> of(Day day) {
        var uses = new ArrayList<PastUse>();
        for (var service : day.services()) {
            int done = service.zonesDone().size();
            for (var run : FormulaRun.of(day.menuEntry(service)))
                if (run.firstZone() + run.zones().size() <= done) ofRun(day, service, run, uses);
        }
        return uses;
    }

    private static void ofRun(Day day, ServiceState service, FormulaRun run, List<PastUse> uses) {
        var bowls = service.bowlsOf(run.number());
        if (bowls.stream().anyMatch(BowlState::live)) return;
        long applied = bowls.stream()
                .mapToLong(bowl -> BowlBalance.of(day, bowl).appliedMilligrams())
                .sum();
        boolean spilled = bowls.stream()
                .anyMatch(bowl -> bowl.closed().flatMap(BowlState.Closed::cause).equals(SPILLED));
        long planned = ZoneGrams.medianMilligrams(day, service, run.zones());
        for (MenuZone zone : run.zones()) {
            // bowls are weighed, zones are not: what a run used is shared out as it was planned
            long used = applied * ZoneGrams.medianMilligrams(day, service, zone) / Math.max(1, planned);
            if (used < 1) continue;
            var menu = day.opened().menu();
            uses.add(new PastUse(
                    day.opened().date(),
                    service.booking().menuId(),
                    zone.zone(),
                    service.booking().clientRef(),
                    zone.baseMilligrams(),
                    menu.lengthPermille(service.booking().length()),
                    menu.densityPermille(service.booking().density()),
                    (int) used,
                    spilled));
        }
    }
}
