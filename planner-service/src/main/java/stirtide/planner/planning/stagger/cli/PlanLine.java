package stirtide.planner.planning.stagger.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import stirtide.planner.planning.stagger.StaggerMix;
import stirtide.planner.planning.stagger.StaggerPlan;
import stirtide.planner.planning.stagger.StaggerScore;

/** A plan as one line of JSON, with times in minutes of the day. */
final class PlanLine {
    private PlanLine() {}

    static String of(DayFile day, StaggerPlan plan, int provenLevels, long firstPlanMillis, long millis) {
        ObjectNode line = new ObjectMapper().createObjectNode();
        line.put("name", day.name());
        figures(line, plan.score());
        line.put("provenLevels", provenLevels);
        figures(line.putObject("bounds"), plan.bound());
        line.put("firstPlanMillis", firstPlanMillis);
        line.put("millis", millis);
        line.put("rounds", plan.rounds());
        ArrayNode bowls = line.putArray("plan");
        for (StaggerMix mix : plan.mixes()) {
            bowls.addObject()
                    .put("run", day.problem().runs().get(mix.runIndex()).id())
                    .put("from", mix.fromMinute())
                    .put("to", mix.toMinute())
                    .put("mixStart", mix.mixStartMinute())
                    .put("assistant", mix.assistant());
        }
        return line.toString();
    }

    private static void figures(ObjectNode to, StaggerScore score) {
        to.put("waitMinutes", score.waitMinutes());
        to.put("bowls", score.mixCost());
        to.put("ageMinutes", score.ageMinutes());
    }
}
