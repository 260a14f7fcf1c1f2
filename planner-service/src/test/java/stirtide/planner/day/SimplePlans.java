package stirtide.planner.day;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBatch;
import stirtide.events.plan.PlannedBatch.Share;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.day.state.BowlIds;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;

/**
 * The least a plan can be, so that the tests of the day stand on their own: one bowl for each run that no live bowl
 * feeds, six minutes before the service starts or now, whichever is later.
 */
final class SimplePlans {
    private SimplePlans() {}

    static Plan draw(PlanQuestion question) {
        var bowls = new ArrayList<PlannedBowl>();
        for (var service : question.services()) {
            int used = service.bowlsUsed();
            for (var run : service.runs()) if (run.live().isEmpty()) bowls.add(bowl(question, service, run, used++));
        }
        return Given.plan(question.basedOnRevision(), question.asOf(), bowls.toArray(PlannedBowl[]::new))
                .withBatches(pair(bowls));
    }

    /** The first two bowls of different services that go by one formula, as one mix. */
    private static List<PlannedBatch> pair(List<PlannedBowl> bowls) {
        for (var one : bowls)
            for (var other : bowls)
                if (one.service() < other.service() && sameFormula(one.formula(), other.formula()))
                    return List.of(batch(one, other));
        return List.of();
    }

    private static boolean sameFormula(BowlFormula one, BowlFormula other) {
        return one.strengthHundredths() == other.strengthHundredths();
    }

    private static PlannedBatch batch(PlannedBowl one, PlannedBowl other) {
        int lightener = one.formula().lightenerMilligrams() + other.formula().lightenerMilligrams();
        var developer = one.formula().developerParts().get(0).developerId();
        return new PlannedBatch(
                List.of(
                        new Share(one.bowl(), "M", one.formula().totalMilligrams()),
                        new Share(other.bowl(), "M", other.formula().totalMilligrams())),
                one.mixStart(),
                one.mixEnd(),
                one.lifeEnds(),
                "bo",
                one.scaleId(),
                new BowlFormula(
                        one.formula().lightenerId(),
                        lightener,
                        List.of(new DeveloperPart(developer, 2 * lightener)),
                        one.formula().strengthHundredths(),
                        2000,
                        one.formula().lowestRatioThousandths(),
                        2500,
                        1990,
                        2010),
                3,
                0);
    }

    private static PlannedBowl bowl(PlanQuestion question, ServiceTask service, RunTask run, int place) {
        int start = Math.max(question.nowMinute(), service.startMinute() - 6);
        var mixStart = question.dayStart().plus(Duration.ofMinutes(start));
        int need = run.reserveMilligrams()
                + run.zones().stream()
                        .mapToInt(PlanQuestion.ZoneTask::needMilligrams)
                        .sum();
        int lightener = Math.min(40_000, 2_000 + need / 300 * 100);
        var developer = run.strengthHundredths() == 600 ? "dev-6" : "dev-9";
        var formula = new BowlFormula(
                run.lightenerId(),
                lightener,
                List.of(new DeveloperPart(developer, 2 * lightener)),
                run.strengthHundredths(),
                2000,
                run.strengthHundredths() == 600 ? 2000 : 1500,
                2500,
                1990,
                2010);
        return new PlannedBowl(
                BowlIds.of(service.service(), place),
                service.service(),
                run.run(),
                service.chair(),
                run.zones().stream().map(PlanQuestion.ZoneTask::zone).toList(),
                mixStart,
                mixStart.plus(Duration.ofMinutes(4)),
                mixStart.plus(Duration.ofMinutes(6)),
                mixStart.plus(Duration.ofMinutes(36)),
                mixStart.plus(Duration.ofMinutes(40)),
                Optional.of("bo"),
                service.service() % 2 == 0 ? "bar-1" : "bar-2",
                "M",
                need,
                3_000,
                formula,
                0);
    }
}
