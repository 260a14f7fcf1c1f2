package stirtide.planner.day;

import java.util.List;
import stirtide.events.command.DayCommand.BeginBatch;
import stirtide.events.command.DayCommand.DivideBatch;
import stirtide.events.command.DayCommand.WeighBatch;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.PlannedBatch;
import stirtide.events.plan.PlannedBatch.Share;
import stirtide.planner.day.state.BowlState;

/** A day with a pair that may be one mix: bowls 1a and 2a, 40 g and 80 g together, 66 g and 54 g apart. */
public final class BatchScene {
    private BatchScene() {}

    public static final BowlFormula WHOLE = new BowlFormula(
            "cloudlift", 40_000, List.of(new DeveloperPart("dev-9", 80_000)), 900, 2000, 1500, 2500, 1992, 2008);

    public static PlannedBatch batch(String mixStart) {
        var start = Given.at(mixStart);
        return new PlannedBatch(
                List.of(new Share("1a", "M", 66_000), new Share("2a", "M", 54_000)),
                start,
                start.plusSeconds(300),
                start.plusSeconds(2400),
                "bo",
                "bar-1",
                WHOLE,
                3,
                0);
    }

    /** The pair is on show; the mix is to be begun at 09:53, first uses are at 10:00 and 10:05. */
    public static Scene planned() {
        return show(Scene.open(Given.booking("one", "foils", 1, "10:00"), Given.booking("two", "full", 2, "10:05")));
    }

    public static Scene show(Scene scene) {
        var plan = Given.plan(
                        scene.day.revision(),
                        scene.day.time(),
                        Given.planned("1a", 1, "09:54", "10:00"),
                        Given.onScale(Given.planned("2a", 2, "09:59", "10:05"), "bar-2"))
                .withBatches(List.of(batch("09:53")));
        return scene.append(new DayEvent.PlanDrawn(plan), StoredEvent.SERVICE, "");
    }

    /** The same, begun at 09:53 by Bo. */
    public static Scene begun() {
        return planned().at("09:53").does(begin());
    }

    /** The same, weighed as planned at 09:57. */
    public static Scene weighed() {
        return begun().at("09:57").does(weigh(40_000, 80_000));
    }

    /** The same, divided as planned. */
    public static Scene divided() {
        return weighed().does(new DivideBatch("1a", 54_000));
    }

    public static BeginBatch begin() {
        return new BeginBatch(List.of("1a", "2a"), "bo");
    }

    public static WeighBatch weigh(int lightener, int developer) {
        return new WeighBatch("1a", lightener, List.of(new DeveloperPart("dev-9", developer)));
    }

    public static BowlState bowl(Scene scene, String id) {
        return scene.day.bowl(id).orElseThrow();
    }
}
