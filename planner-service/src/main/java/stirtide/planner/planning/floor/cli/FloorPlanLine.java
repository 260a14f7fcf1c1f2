package stirtide.planner.planning.floor.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import stirtide.planner.planning.floor.BowlAssignment;
import stirtide.planner.planning.floor.FloorPlan;
import stirtide.planner.planning.floor.FloorScore;
import stirtide.planner.planning.floor.ServiceTimes;

/**
 * A plan of a floor day as one line of JSON.
 *
 * @param name name of the day
 * @param plan the plan
 * @param bounds what no plan can beat
 * @param provenLevels levels on which the plan is as good as the bounds
 * @param firstPlanMillis processor time until the first plan
 * @param millis processor time in all
 */
record FloorPlanLine(
        String name, FloorPlan plan, FloorScore bounds, int provenLevels, long firstPlanMillis, long millis) {
    String json() {
        ObjectNode line = new ObjectMapper().createObjectNode();
        line.put("name", name);
        figures(line, plan.score());
        line.put("provenLevels", provenLevels);
        figures(line.putObject("bounds"), bounds);
        line.put("firstPlanMillis", firstPlanMillis);
        line.put("millis", millis);
        ArrayNode bowls = line.putArray("bowls");
        plan.bowls().forEach(bowl -> bowl(bowls.addObject(), bowl));
        ArrayNode services = line.putArray("services");
        plan.services().forEach(service -> service(services.addObject(), service));
        return line.toString();
    }

    private static void figures(ObjectNode to, FloorScore score) {
        to.put("lateness", score.lateness());
        to.put("handling", score.handling());
        to.put("standing", score.standing());
    }

    private static void bowl(ObjectNode to, BowlAssignment bowl) {
        to.put("service", bowl.service()).put("from", bowl.from()).put("to", bowl.to());
        to.put("size", bowl.size()).put("mixStart", bowl.mixStart()).put("assistant", bowl.assistant());
    }

    private static void service(ObjectNode to, ServiceTimes service) {
        to.put("service", service.service());
        ArrayNode minutes = to.putArray("minutes");
        service.minutes().forEach(minutes::add);
        to.put("rinse", service.rinse()).put("rinseAssistant", service.rinseAssistant());
    }
}
