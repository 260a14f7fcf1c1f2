package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.planning.search.Altered.at;
import static stirtide.planner.planning.search.Altered.with;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.plan.PlannedService;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.setup.BowlSize;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.planning.bounds.BoundedPlanner;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.BowlOut;
import stirtide.planner.planning.search.PlanQuestion.LiveSupply;
import stirtide.planner.planning.search.PlanQuestion.Minutes;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;

/** The checker finds every rule that a plan breaks: each is broken once in a plan that is valid without it. */
class BrokenPlansTest {
    private static final PlanQuestion QUESTION = day().question();
    private static final Plan VALID = BoundedPlanner.draw(QUESTION, 20);

    /** Two clients at 10:00 for two people on two scales, one at 11:00; bowls 1a, 2a, 1b and 3a. */
    private static SmallDay day() {
        SmallDay day = new SmallDay().people("ida", "tom").scales(2);
        return day.service(600, SmallDay.zone("crown", 30, 30), SmallDay.zone("sides", "foil", 5, 15, 15, 1))
                .service(600, SmallDay.zone("roots", "scalp", 0, 20, 20, 1))
                .service(660, SmallDay.zone("ends", 10, 10));
    }

    private static Instant later(Instant instant, int minutes) {
        return instant.plusSeconds(60L * minutes);
    }

    private static Plan bowl(int place, UnaryOperator<PlannedBowl> change) {
        return with(
                VALID,
                "bowls",
                at(VALID.bowls(), place, change.apply(VALID.bowls().get(place))));
    }

    private static Plan set(int place, String component, Object value) {
        return bowl(place, bowl -> with(bowl, component, value));
    }

    private static Plan formula(String component, Object value) {
        return bowl(0, bowl -> with(bowl, "formula", with(bowl.formula(), component, value)));
    }

    private static Plan zone(String component, UnaryOperator<Instant> change) {
        PlannedService service = VALID.services().get(0);
        PlannedZone zone = service.zones().get(0);
        Instant before = switch (component) {
            case "applyStart" -> zone.applyStart();
            case "applyEnd" -> zone.applyEnd();
            case "checkAt" -> zone.checkAt();
            case "rinseAt" -> zone.rinseAt();
            default -> zone.rinseBy();
        };
        PlannedZone changed = with(zone, component, change.apply(before));
        return with(
                VALID, "services", at(VALID.services(), 0, with(service, "zones", at(service.zones(), 0, changed))));
    }

    private static Plan total(String component, Object value) {
        return with(VALID, "totals", with(VALID.totals(), component, value));
    }

    private static Plan shifted(int place, int minutes) {
        return bowl(
                place,
                bowl -> with(
                        with(
                                with(bowl, "mixStart", later(bowl.mixStart(), minutes)),
                                "mixEnd",
                                later(bowl.mixEnd(), minutes)),
                        "lifeEnds",
                        later(bowl.lifeEnds(), minutes)));
    }

    static Stream<Arguments> brokenPlans() {
        PlannedBowl first = VALID.bowls().get(0);
        BowlFormula formula = first.formula();
        DeveloperPart developer = formula.developerParts().get(0);
        return Stream.of(
                Arguments.of("stands on revision", with(VALID, "basedOnRevision", 99L)),
                Arguments.of(
                        "feeds",
                        with(
                                VALID,
                                "bowls",
                                VALID.bowls().subList(1, VALID.bowls().size()))),
                Arguments.of("planned twice", with(VALID, "bowls", at(VALID.bowls(), 1, first))),
                Arguments.of("not asked for", set(0, "service", 9)),
                Arguments.of("wrong chair", set(0, "chair", 9)),
                Arguments.of("unknown run", set(0, "run", 9)),
                Arguments.of("out of the order of letters", set(0, "bowl", "1z")),
                Arguments.of("no assistant of the day", set(0, "personId", Optional.of("nobody"))),
                Arguments.of("no note says why", set(0, "personId", Optional.empty())),
                Arguments.of("no scale", set(0, "scaleId", "none")),
                Arguments.of("no bowl size", set(0, "bowlSizeId", "none")),
                Arguments.of(
                        "at one time", set(0, "personId", VALID.bowls().get(1).personId())),
                Arguments.of(
                        "at one time", set(0, "scaleId", VALID.bowls().get(1).scaleId())),
                Arguments.of("in the past", shifted(0, -600)),
                Arguments.of("before it is mixed and carried", shifted(0, 1)),
                Arguments.of("beyond its working life", shifted(0, -30)),
                Arguments.of("mixing takes the wrong time", set(0, "mixEnd", later(first.mixEnd(), 1))),
                Arguments.of("its working life is wrong", set(0, "lifeEnds", later(first.lifeEnds(), 5))),
                Arguments.of("before its turn", set(0, "neededFrom", later(first.neededFrom(), -1))),
                Arguments.of("last use", set(0, "neededTo", later(first.neededTo(), 60))),
                Arguments.of("whole minute", set(0, "mixStart", first.mixStart().plusSeconds(1))),
                Arguments.of("waitMinutes", set(0, "waitMinutes", 4)),
                Arguments.of("needs", set(0, "neededMilligrams", first.neededMilligrams() - 1)),
                Arguments.of("residue is wrong", set(0, "residueMilligrams", 0)),
                Arguments.of(
                        "feeds zones", set(0, "zones", List.of(first.zones().get(0), "more"))),
                Arguments.of("less than need", formula("lightenerMilligrams", 100)),
                Arguments.of("more than its fill", formula("lightenerMilligrams", 500_000)),
                Arguments.of(
                        "the ratio may leave", formula("lightenerMilligrams", formula.lightenerMilligrams() + 9_000)),
                Arguments.of("cannot show", formula("lightenerMilligrams", formula.lightenerMilligrams() + 1)),
                Arguments.of("wrong lightener", formula("lightenerId", "other")),
                Arguments.of("window", formula("lowestRatioThousandths", 100)),
                Arguments.of("strength told", formula("strengthHundredths", 900)),
                Arguments.of(
                        "may not be used", formula("developerParts", List.of(with(developer, "developerId", "water")))),
                Arguments.of(
                        "may not be used", formula("developerParts", List.of(with(developer, "developerId", "x")))),
                Arguments.of("has no developer", formula("developerParts", List.of())),
                Arguments.of("applied from", zone("applyStart", at -> later(at, 1))),
                Arguments.of("applied from", zone("applyEnd", at -> later(at, 1))),
                Arguments.of("halfway check", zone("checkAt", at -> later(at, -60))),
                Arguments.of("does not fit its section", zone("rinseAt", at -> later(at, -1))),
                Arguments.of("processed too long", zone("rinseAt", at -> later(at, 60))),
                Arguments.of("must be rinsed by", zone("rinseBy", at -> later(at, 1))),
                Arguments.of(
                        "plan lists services",
                        with(VALID, "services", VALID.services().subList(1, 3))),
                Arguments.of("order of mixing", with(VALID, "bowls", reversed(VALID.bowls()))),
                Arguments.of("total wait", total("waitMinutes", 1)),
                Arguments.of("total of bowls", total("bowlCount", 1)),
                Arguments.of("mixed grams", total("mixedMilligrams", 1)),
                Arguments.of("over-mixed grams", total("overMixMilligrams", -1)),
                Arguments.of("total age", total("ageMinutes", 1)),
                Arguments.of("below the bound", total("waitBound", Optional.of(1))),
                Arguments.of("fewer bowls", total("bowlBound", Optional.of(40))));
    }

    /** Plans with a wait, an early rinse and a stylist who mixes; each must say so. */
    static Stream<Arguments> silentPlans() {
        SmallDay late = new SmallDay().people("ida").scales(1).service(600, SmallDay.zone("crown", 20, 20));
        late.now = 598;
        SmallDay early = new SmallDay().people("ida").scales(1);
        early.rules = List.of(new PlanRules().foilFor(45));
        early.service(600, SmallDay.zone("crown", 15, 15), SmallDay.zone("sides", "foil", 5, 15, 15, 1));
        SmallDay alone = new SmallDay().scales(1).service(600, SmallDay.zone("crown", 50, 50));
        SmallDay forbidden = new SmallDay().people("ida").scales(1).service(600, SmallDay.zone("crown", 20, 20));
        forbidden.rules = List.of(new PlanRules().scalpUpTo(300));
        return Stream.of(
                Arguments.of("no reason is given", late.question(), "waits"),
                Arguments.of("rinsed early without a note", early.question(), "notes"),
                Arguments.of("no note says why", alone.question(), "notes"),
                Arguments.of("no bowl feeds", forbidden.question(), "notes"));
    }

    @ParameterizedTest(name = "{index}: {0}")
    @MethodSource("silentPlans")
    void a_plan_that_keeps_quiet_about_a_shortcoming_is_refused(String words, PlanQuestion question, String silenced) {
        Plan plan = BoundedPlanner.draw(question, 5);
        assertThat(PlanChecker.check(question, plan)).isEmpty();
        assertThat(PlanChecker.check(question, with(plan, silenced, List.of())))
                .anySatisfy(found -> assertThat(found).contains(words));
    }

    @Test
    void a_stylist_cannot_mix_while_applying() {
        SmallDay day = new SmallDay().scales(1).service(600, SmallDay.zone("crown", 50, 50));
        Plan plan = BoundedPlanner.draw(day.question(), 5);
        PlannedBowl second = plan.bowls().get(1);
        Plan broken = with(plan, "bowls", at(plan.bowls(), 1, with(second, "mixStart", later(second.mixStart(), -3))));
        assertThat(PlanChecker.check(day.question(), broken))
                .anySatisfy(found -> assertThat(found).contains("while still applying"));
    }

    private static List<PlannedBowl> reversed(List<PlannedBowl> bowls) {
        return Stream.iterate(bowls.size() - 1, i -> i >= 0, i -> i - 1)
                .map(bowls::get)
                .toList();
    }

    /** The plan is right for the question it was drawn for, and wrong for one in which a little less is allowed. */
    static Stream<Arguments> harderQuestions() {
        ServiceTask task = QUESTION.services().get(0);
        BowlSize tub = QUESTION.bowlSizes().get(0);
        PlannedBowl first = VALID.bowls().get(0);
        String person = first.personId().orElseThrow();
        int place = QUESTION.assistants().get(0).personId().equals(person) ? 0 : 1;
        int mix = SmallDay.minute(first.mixStart());
        Assistant off = new Assistant(person, person, List.of(new Minutes(480, mix + 3)), 0, Optional.empty());
        Assistant busy =
                new Assistant(person, person, List.of(new Minutes(480, 1200)), mix + 1, Optional.of(first.scaleId()));
        SmallDay shortLife = day();
        shortLife.life = 30;
        SmallDay weak = day();
        weak.rules = List.of(new PlanRules().foil(), new PlanRules().scalpUpTo(300));
        SmallDay narrow = day();
        narrow.rules = List.of(narrow(1900, 1950), new PlanRules().scalpUpTo(600));
        SmallDay soon = day();
        soon.rules = List.of(new PlanRules().foilFor(45), new PlanRules().scalpUpTo(600));
        return Stream.of(
                Arguments.of("not on duty", with(QUESTION, "assistants", at(QUESTION.assistants(), place, off))),
                Arguments.of(
                        "still at another mix", with(QUESTION, "assistants", at(QUESTION.assistants(), place, busy))),
                Arguments.of("still in use", with(QUESTION, "assistants", at(QUESTION.assistants(), place, busy))),
                Arguments.of("in the past", with(QUESTION, "nowMinute", mix + 1)),
                Arguments.of("mixed and carried", with(QUESTION, "handOverMinutes", 3)),
                Arguments.of("would be in use", with(QUESTION, "bowlSizes", List.of(with(tub, "count", 1)))),
                Arguments.of(
                        "would be in use",
                        with(QUESTION, "bowlsOut", java.util.Collections.nCopies(10, new BowlOut("tub", 1200)))),
                Arguments.of(
                        "more than its fill",
                        with(QUESTION, "bowlSizes", List.of(with(tub, "usableMilligrams", 20_000)))),
                Arguments.of("beyond its working life", shortLife.question()),
                Arguments.of("not permitted", weak.question()),
                Arguments.of(
                        "the blend may miss",
                        with(
                                QUESTION,
                                "developers",
                                List.of(with(QUESTION.developers().get(0), "strengthHundredths", 650)))),
                Arguments.of("the ratio may leave", narrow.question()),
                Arguments.of("must be rinsed by", soon.question()),
                Arguments.of(
                        "the ratio may leave",
                        with(
                                narrow.question(),
                                "scales",
                                List.of(SmallDay.scale("s1", 1000), SmallDay.scale("s2", 1000)))),
                Arguments.of("needs", with(QUESTION, "services", at(QUESTION.services(), 0, fedAlready(task)))));
    }

    private static stirtide.events.setup.Directions.TechniqueRule narrow(int lowest, int highest) {
        return with(with(new PlanRules().foil(), "lowestRatioThousandths", lowest), "highestRatioThousandths", highest);
    }

    private static ServiceTask fedAlready(ServiceTask task) {
        var run = task.runs().get(0);
        return with(task, "runs", List.of(with(run, "live", List.of(new LiveSupply("1a", 590, 620, 5_000)))));
    }

    @Test
    void the_plan_is_valid_before_it_is_broken() {
        assertThat(PlanChecker.check(QUESTION, VALID)).isEmpty();
        assertThat(VALID.bowls()).extracting(PlannedBowl::bowl).contains("1a", "1b", "2a", "3a");
    }

    @ParameterizedTest(name = "{index}: {0}")
    @MethodSource("brokenPlans")
    void a_broken_rule_is_found(String words, Plan broken) {
        assertThat(PlanChecker.check(QUESTION, broken))
                .anySatisfy(found -> assertThat(found).contains(words));
    }

    @ParameterizedTest(name = "{index}: {0}")
    @MethodSource("harderQuestions")
    void a_plan_for_an_easier_question_is_refused(String words, PlanQuestion harder) {
        assertThat(PlanChecker.check(harder, VALID))
                .anySatisfy(found -> assertThat(found).contains(words));
    }
}
