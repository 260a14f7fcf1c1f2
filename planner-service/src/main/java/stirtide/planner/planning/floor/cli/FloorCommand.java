package stirtide.planner.planning.floor.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.SplittableRandom;
import stirtide.planner.planning.floor.BowlAssignment;
import stirtide.planner.planning.floor.FloorEngine;
import stirtide.planner.planning.floor.FloorPlan;
import stirtide.planner.planning.floor.FloorScore;
import stirtide.planner.planning.floor.ServiceTimes;

public final class FloorCommand {
    private FloorCommand() {}

    public static void main(String[] args) throws Exception {
        double seconds = Double.parseDouble(args[0]);
        for (int i = 1; i < args.length; i++) {
            FloorDayFile file = FloorDayFile.read(Path.of(args[i]));
            long begin = cpu();
            FloorEngine engine = new FloorEngine(file.day(), new SplittableRandom(1));
            long first = cpu();
            FloorScore fs = engine.plan().score();
            long end = begin + (long) (seconds * 1e9);
            FloorPlan plan = engine.improve(steps -> cpu() < end);
            long done = cpu();
            System.err.println(file.name() + " first " + fs + " " + (first - begin) / 1000000 + " ms; steps/s "
                    + (long) (engine.steps() / ((done - first) / 1e9)) + " -> " + plan.score());
            System.out.println(line(file.name(), plan, (first - begin) / 1000000, (done - begin) / 1000000));
        }
    }

    static long cpu() {
        return java.lang.management.ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    static String line(String name, FloorPlan plan, long first, long millis) {
        ObjectNode line = new ObjectMapper().createObjectNode();
        line.put("name", name);
        line.put("lateness", plan.score().lateness());
        line.put("handling", plan.score().handling());
        line.put("standing", plan.score().standing());
        line.put("provenLevels", 0);
        line.put("firstPlanMillis", first);
        line.put("millis", millis);
        ArrayNode bowls = line.putArray("bowls");
        for (BowlAssignment b : plan.bowls())
            bowls.addObject()
                    .put("service", b.service())
                    .put("from", b.from())
                    .put("to", b.to())
                    .put("size", b.size())
                    .put("mixStart", b.mixStart())
                    .put("assistant", b.assistant());
        ArrayNode services = line.putArray("services");
        for (ServiceTimes s : plan.services()) {
            ObjectNode o = services.addObject();
            o.put("service", s.service());
            ArrayNode m = o.putArray("minutes");
            s.minutes().forEach(m::add);
            o.put("rinse", s.rinse());
            o.put("rinseAssistant", s.rinseAssistant());
        }
        return line.toString();
    }
}
