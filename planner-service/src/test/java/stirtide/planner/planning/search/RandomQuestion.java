package stirtide.planner.planning.search;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.AccuracyClass;
import stirtide.events.setup.Scale.Range;
import stirtide.events.setup.Scale.Weighing;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.BowlOut;
import stirtide.planner.planning.search.PlanQuestion.Minutes;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;

/** An invented day of a given number of services, the same for the same seed. */
final class RandomQuestion {
    static final Instant START = Instant.parse("2027-05-14T00:00:00Z");

    private static final List<String> NAMES = List.of("ida", "tom", "lea", "max", "uma", "jon");
    private final Random random;
    private final int services;

    private RandomQuestion(long seed, int services) {
        this.random = new Random(seed);
        this.services = services;
    }

    static PlanQuestion of(long seed, int services) {
        return new RandomQuestion(seed, services).question();
    }

    /** A day of two people: of ten hours, or so short that mixing keeps them busy to a share of the time. */
    static PlanQuestion loaded(long seed, int services, int loadPercent) {
        PlanQuestion natural = within(seed, services, 600);
        if (loadPercent == 0) return natural;
        int mixing = Planner.draw(natural, 0).bowls().stream()
                .mapToInt(bowl -> SmallDay.minute(bowl.mixEnd()) - SmallDay.minute(bowl.mixStart()))
                .sum();
        return within(seed, services, mixing * 100 / (2 * loadPercent));
    }

    /** A day of two people whose services start within so many minutes. */
    static PlanQuestion within(long seed, int services, int spanMinutes) {
        return new RandomQuestion(seed, services).twoPeople(spanMinutes);
    }

    /** The same day with so few stylists and chairs that services share them: the bookings know nothing of it. */
    static PlanQuestion shared(long seed, int services, int stylists, int chairs) {
        PlanQuestion alone = of(seed, services);
        List<ServiceTask> tasks = alone.services().stream()
                .map(task -> new ServiceTask(
                        task.service(),
                        1 + task.service() % chairs,
                        Optional.of("stylist-" + task.service() % stylists),
                        task.started(),
                        task.startMinute(),
                        task.bowlsUsed(),
                        task.runs(),
                        task.processing()))
                .toList();
        return alone.withServices(tasks);
    }

    private int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    private PlanQuestion question() {
        List<Assistant> assistants = new ArrayList<>();
        int count = Math.max(1, Math.min(NAMES.size(), services / 18 + between(0, 1)));
        for (int i = 0; i < count; i++) assistants.add(assistant(NAMES.get(i)));
        return question(assistants, between(0, 3) == 0 ? 150 : 480, 2, Math.max(1, count - between(0, 1)));
    }

    /** Two people with a break each, two scales and bowls enough, services that start within so many minutes. */
    private PlanQuestion twoPeople(int spanMinutes) {
        List<Assistant> assistants = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            int pause = 600 + 90 * i + between(0, 60);
            List<Minutes> duty = List.of(new Minutes(480, pause), new Minutes(pause + 30, 720 + spanMinutes));
            assistants.add(new Assistant(NAMES.get(i), SmallDay.called(NAMES.get(i)), duty, 0, Optional.empty()));
        }
        return question(assistants, Math.max(5, spanMinutes), 12, 2);
    }

    private PlanQuestion question(List<Assistant> assistants, int span, int leastBowls, int scaleCount) {
        List<Directions> directions = List.of(directions("dune"), directions("reef"), directions("mica"));
        List<ServiceTask> tasks = new ArrayList<>();
        for (int number = 1; number <= services; number++) tasks.add(service(number, span, directions));
        List<Scale> scales = new ArrayList<>();
        for (int i = 0; i < scaleCount; i++) scales.add(scale("bench" + (i + 1)));
        List<BowlSize> bowls = List.of(
                new BowlSize("small", 60_000, between(1, 3) * 1000, between(leastBowls, leastBowls + 2 + services / 4)),
                new BowlSize(
                        "large", 130_000, between(2, 5) * 1000, between(leastBowls, leastBowls + 2 + services / 4)));
        List<BowlOut> out = random.nextInt(4) == 0 ? List.of(new BowlOut("small", 560)) : List.of();
        return new PlanQuestion(
                7,
                START.plusSeconds(480 * 60),
                START,
                java.time.ZoneOffset.UTC,
                480,
                between(1, 3),
                between(0, 15),
                5,
                assistants,
                List.of(),
                scales,
                bowls,
                developers(),
                directions,
                out,
                tasks,
                Optional.empty(),
                false,
                0);
    }

    private Assistant assistant(String name) {
        int from = between(16, 20) * 30;
        int to = between(34, 40) * 30;
        List<Minutes> duty = new ArrayList<>();
        for (int breaks = between(0, 2), i = 0; i < breaks; i++) {
            int pause = between(from + 60, Math.min(to - 60, from + 240));
            duty.add(new Minutes(from, pause));
            from = pause + between(10, 40);
        }
        duty.add(new Minutes(from, to));
        return new Assistant(name, SmallDay.called(name), duty, 0, Optional.empty());
    }

    private Scale scale(String id) {
        int division = random.nextInt(5) == 0 ? 1000 : 100;
        return new Scale(
                id,
                AccuracyClass.III,
                random.nextBoolean(),
                random.nextBoolean() ? Weighing.TARE_BETWEEN : Weighing.RUNNING_TOTAL,
                20 * division,
                List.of(new Range(6000 * division, division, division)));
    }

    private static List<Developer> developers() {
        List<Developer> shelf = new ArrayList<>();
        for (int strength : new int[] {300, 600, 900, 1200})
            shelf.add(new Developer(
                    "d" + strength, "Invented " + strength, strength, 1_000_000, BigDecimal.TEN, Optional.empty()));
        return shelf;
    }

    private Directions directions(String id) {
        List<TechniqueRule> rules = List.of(
                new TechniqueRule("foil", false, 1500, 2500, 1200, between(45, 60)),
                new TechniqueRule("freehand", false, 1000, 2000, 900, between(50, 60)),
                new TechniqueRule("scalp", true, 1500, 3000, 600, between(45, 50)));
        return new Directions(
                id,
                "Invented " + id,
                "powder",
                between(30, 60),
                between(3, 8),
                random.nextBoolean(),
                rules,
                500_000,
                BigDecimal.ONE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    private ServiceTask service(int number, int span, List<Directions> directions) {
        List<RunTask> runs = new ArrayList<>();
        int count = random.nextInt(4) == 0 ? 2 : 1;
        for (int run = 1; run <= count; run++) {
            List<ZoneTask> zones = new ArrayList<>();
            String[] techniques = random.nextInt(4) == 0
                    ? new String[] {"foil", "freehand"}
                    : new String[] {List.of("foil", "freehand", "scalp").get(random.nextInt(3))};
            for (int zone = 1, zoneCount = between(1, 4); zone <= zoneCount; zone++)
                zones.add(zone(run + "." + zone, techniques[random.nextInt(techniques.length)], run));
            int strength = List.of(300, 600, 600, 450, 900).get(random.nextInt(5));
            int ratio = List.of(1500, 2000, 2000, 1750).get(random.nextInt(4));
            String lightener = directions.get(random.nextInt(3)).lightenerId();
            // every third service has a reserve on its last bowls; without drawing numbers, so that the days stay what
            // they were
            int reserve = number % 3 == 0 ? 4_000 + 1_000 * (number % 7) : 0;
            runs.add(new RunTask(run, lightener, strength, ratio, zones, List.of(), reserve));
        }
        return new ServiceTask(
                number, number, Optional.empty(), false, 520 + 5 * random.nextInt(span / 5), 0, runs, List.of());
    }

    private ZoneTask zone(String name, String technique, int section) {
        int minutes = between(5, 30);
        return new ZoneTask(
                name,
                technique,
                random.nextInt(4) == 0 ? between(5, 20) : 0,
                minutes,
                minutes * between(800, 2500),
                between(15, 30),
                section,
                Optional.empty());
    }
}
