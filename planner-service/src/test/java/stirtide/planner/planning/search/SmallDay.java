package stirtide.planner.planning.search;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.Plan;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.AccuracyClass;
import stirtide.events.setup.Scale.Range;
import stirtide.events.setup.Scale.Weighing;
import stirtide.planner.planning.search.PlanQuestion.AppliedZone;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.BowlOut;
import stirtide.planner.planning.search.PlanQuestion.LiveSupply;
import stirtide.planner.planning.search.PlanQuestion.Minutes;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;

/**
 * A small invented day to be set up by hand. Mixing takes 5 minutes, the way to the chair 2, a mix lives 40, a bowl of 120 g
 * loses 2 g, one gram is used each minute unless said otherwise.
 */
final class SmallDay {
    static final int MIX = 5;
    static final int CARRY = 2;
    static final int LIFE = 40;

    final List<Assistant> assistants = new ArrayList<>();
    final List<Scale> scales = new ArrayList<>();
    final List<BowlOut> out = new ArrayList<>();
    final List<ServiceTask> services = new ArrayList<>();
    List<TechniqueRule> rules = List.of(
            new TechniqueRule("foil", false, 1500, 2500, 1200, 60),
            new TechniqueRule("scalp", true, 1000, 2000, 600, 50));
    BowlSize bowl = new BowlSize("tub", 120_000, 2_000, 10);
    java.time.Instant dayStart = RandomQuestion.START;
    java.time.ZoneId zone = java.time.ZoneOffset.UTC;
    int washMinutes = 10;
    int now = 480;
    int carryMinutes = 0;
    int life = LIFE;
    Optional<Plan> onShow = Optional.empty();

    SmallDay people(String... names) {
        for (String name : names) assistants.add(person(name, 480, 1200));
        return this;
    }

    static Assistant person(String name, int from, int to) {
        return new Assistant(name, called(name), List.of(new Minutes(from, to)), 0, Optional.empty());
    }

    /** Name of a person whose id is the name in small letters. */
    static String called(String id) {
        return id.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + id.substring(1);
    }

    SmallDay scales(int count) {
        for (int i = 1; i <= count; i++) scales.add(scale("s" + i, 100));
        return this;
    }

    static Scale scale(String id, int division) {
        return new Scale(
                id,
                AccuracyClass.III,
                false,
                Weighing.TARE_BETWEEN,
                0,
                List.of(new Range(3_000_000, division, division)));
    }

    SmallDay service(int start, ZoneTask... zones) {
        return service(start, List.of(), zones);
    }

    SmallDay service(int start, List<LiveSupply> live, ZoneTask... zones) {
        int number = services.size() + 1;
        services.add(new ServiceTask(
                number,
                number,
                Optional.empty(),
                false,
                start,
                live.size(),
                List.of(run(1, live, zones)),
                List.<AppliedZone>of()));
        return this;
    }

    static RunTask run(int number, List<LiveSupply> live, ZoneTask... zones) {
        return new RunTask(number, "dune", 600, 2000, List.of(zones), live, 0);
    }

    static ZoneTask zone(String name, int minutes, int grams) {
        return zone(name, "foil", 0, minutes, grams, 1);
    }

    static ZoneTask zone(String name, String technique, int gap, int minutes, int grams, int section) {
        return new ZoneTask(name, technique, gap, minutes, grams * 1000, 20, section, Optional.empty());
    }

    Directions directions() {
        return new Directions(
                "dune",
                "Invented dune",
                "powder",
                life,
                MIX,
                false,
                rules,
                500_000,
                BigDecimal.ONE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    PlanQuestion question() {
        Developer developer = new Developer("d600", "Invented 600", 600, 1_000_000, BigDecimal.TEN, Optional.empty());
        return new PlanQuestion(
                3,
                dayStart.plusSeconds(60L * now),
                dayStart,
                zone,
                now,
                CARRY,
                washMinutes,
                5,
                assistants,
                List.of(),
                scales,
                List.of(bowl),
                List.of(developer),
                List.of(directions()),
                out,
                services,
                onShow,
                false,
                carryMinutes);
    }

    static int minute(java.time.Instant instant) {
        return (int) java.time.Duration.between(RandomQuestion.START, instant).toMinutes();
    }
}
