package stirtide.planner.day;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.events.day.Booking;
import stirtide.events.day.ClientTests;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Span;
import stirtide.planner.day.state.BowlIds;

/** The invented salon of the tests of a day. All times are UTC, so 10:05 in a test is 10:05 on its clock. */
public final class Given {
    public static final LocalDate DATE = LocalDate.of(2027, 5, 14);
    public static final String DAY = "tidehouse/2027-05-14";

    private Given() {}

    public static Instant at(String clock) {
        return Instant.parse(DATE + "T" + clock + (clock.length() == 5 ? ":00Z" : "Z"));
    }

    public static Span span(String from, String to) {
        return new Span(at(from), at(to));
    }

    public static DaySetup setup() {
        return setup(2, 4);
    }

    /** A bar with as many scales and bowls. */
    public static DaySetup setup(int scales, int bowls) {
        var salon = new Salon(
                "tidehouse",
                "Tidehouse",
                "UTC",
                "EUR",
                3,
                2,
                5,
                List.of(
                        new Person(
                                "bo",
                                "Bo",
                                Person.Role.ASSISTANT,
                                List.of(span("08:00", "12:00"), span("13:00", "18:00"))),
                        new Person("mika", "Mika", Person.Role.ASSISTANT, List.of(span("08:00", "18:00"))),
                        new Person("ilka", "Ilka", Person.Role.STYLIST, List.of(span("08:00", "18:00")))),
                java.util.stream.IntStream.rangeClosed(1, scales)
                        .mapToObj(n -> new Scale(
                                "bar-" + n,
                                Scale.AccuracyClass.II,
                                true,
                                Scale.Weighing.TARE_BETWEEN,
                                500,
                                List.of(new Scale.Range(2_000_000, 100, 1000))))
                        .toList(),
                List.of(new BowlSize("M", 120_000, 3_000, bowls)),
                Optional.empty(),
                Optional.empty());
        return new DaySetup(DATE, salon, developers(), List.of(directions()), menu());
    }

    private static List<Developer> developers() {
        return List.of(
                new Developer("dev-6", "Developer 6", 600, 1_000_000, BigDecimal.TEN, Optional.empty()),
                new Developer("dev-9", "Developer 9", 900, 1_000_000, BigDecimal.TEN, Optional.empty()),
                new Developer("dev-12", "Developer 12", 1200, 1_000_000, BigDecimal.TEN, Optional.empty()));
    }

    private static Directions directions() {
        return new Directions(
                "cloudlift",
                "Cloudlift",
                "powder",
                40,
                4,
                false,
                List.of(
                        new Directions.TechniqueRule("foil", false, 1500, 2500, 900, 55),
                        new Directions.TechniqueRule("on-scalp", true, 2000, 2500, 600, 45)),
                500_000,
                BigDecimal.ONE,
                Optional.empty(),
                Optional.of(48),
                Optional.empty(),
                List.of("Rinse with lukewarm water."));
    }

    private static Menu menu() {
        var crown = new Menu.MenuZone("crown", "foil", "cloudlift", 900, 2000, 40_000, 20, 0, 20, 1);
        var sides = new Menu.MenuZone("sides", "foil", "cloudlift", 900, 2000, 20_000, 10, 0, 20, 1);
        var roots = new Menu.MenuZone("roots", "on-scalp", "cloudlift", 600, 2000, 30_000, 15, 10, 20, 2);
        return new Menu(
                List.of(
                        new Menu.MenuEntry("foils", "Foils", List.of(crown, sides)),
                        new Menu.MenuEntry("full", "Full head", List.of(crown, sides, roots))),
                new TreeMap<>(Map.of("medium", 1000, "long", 1300)),
                new TreeMap<>(Map.of("medium", 1000, "dense", 1250)));
    }

    public static Booking booking(String uid, String menuId, int chair, String start) {
        return new Booking(
                        uid,
                        menuId,
                        chair,
                        at(start),
                        "Q.Z.",
                        "medium",
                        "medium",
                        Optional.empty(),
                        0,
                        0,
                        Optional.empty(),
                        Optional.empty())
                .withTests(Optional.of(
                        new ClientTests(Optional.of(at("10:00").minus(Duration.ofDays(3))), Optional.empty())));
    }

    /** 30 g of lightener and 60 g of developer, window 1:1.5 to 1:2.5. */
    public static BowlFormula formula() {
        return new BowlFormula(
                "cloudlift", 30_000, List.of(new DeveloperPart("dev-9", 60_000)), 900, 2000, 1500, 2500, 1990, 2010);
    }

    public static PlannedBowl planned(String bowl, int chair, String mixStart, String neededFrom) {
        var start = at(mixStart);
        return new PlannedBowl(
                bowl,
                BowlIds.serviceOf(bowl).orElseThrow(),
                1,
                chair,
                List.of("crown", "sides"),
                start,
                start.plusSeconds(240),
                at(neededFrom),
                at(neededFrom).plusSeconds(1800),
                start.plusSeconds(2400),
                Optional.of("bo"),
                "bar-1",
                "M",
                60_000,
                3_000,
                formula(),
                0);
    }

    public static Plan plan(long basedOn, Instant asOf, PlannedBowl... bowls) {
        return new Plan(
                basedOn,
                asOf,
                0,
                List.of(bowls),
                List.of(),
                List.of(),
                List.of(),
                new Plan.PlanTotals(0, bowls.length, 0, 0, 0),
                List.of(),
                List.of(),
                Optional.empty());
    }

    public static PlannedBowl onScale(PlannedBowl bowl, String scaleId) {
        return new PlannedBowl(
                bowl.bowl(),
                bowl.service(),
                bowl.run(),
                bowl.chair(),
                bowl.zones(),
                bowl.mixStart(),
                bowl.mixEnd(),
                bowl.neededFrom(),
                bowl.neededTo(),
                bowl.lifeEnds(),
                bowl.personId(),
                scaleId,
                bowl.bowlSizeId(),
                bowl.neededMilligrams(),
                bowl.residueMilligrams(),
                bowl.formula(),
                bowl.waitMinutes());
    }
}
