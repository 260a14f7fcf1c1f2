package stirtide.planner.check;

import java.util.Optional;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;

/** How many zones of a run its live bowls may feed: the leading ones whose technique permits what the run wants. */
final class FirstFeed {
    /** Regulation (EC) No 1223/2009, Annex III, entry 12 (a): 12 % on hair. */
    static final int LEGAL_HUNDREDTHS = 1200;

    private FirstFeed() {}

    static int length(PlanQuestion question, RunTask run) {
        int zones = 0;
        for (ZoneTask zone : run.zones()) {
            if (!permits(question, run, zone)) break;
            zones++;
        }
        return zones;
    }

    /** Whether the directions permit strength and ratio of the run on the zone. */
    static boolean permits(PlanQuestion question, RunTask run, ZoneTask zone) {
        return rule(question, run.lightenerId(), zone.technique())
                .map(rule -> run.strengthHundredths() <= Math.min(LEGAL_HUNDREDTHS, rule.highestStrengthHundredths())
                        && run.ratioThousandths() >= rule.lowestRatioThousandths()
                        && run.ratioThousandths() <= rule.highestRatioThousandths())
                .orElse(false);
    }

    static Optional<Directions> directions(PlanQuestion question, String lightenerId) {
        return question.directions().stream()
                .filter(each -> each.lightenerId().equals(lightenerId))
                .findFirst();
    }

    static Optional<TechniqueRule> rule(PlanQuestion question, String lightenerId, String technique) {
        return directions(question, lightenerId)
                .flatMap(each -> each.techniques().stream()
                        .filter(rule -> rule.technique().equals(technique))
                        .findFirst());
    }
}
