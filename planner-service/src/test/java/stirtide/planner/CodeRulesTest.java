package stirtide.planner;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Set;
import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Test;

/**
 * The core is pure: the same input gives the same output, whatever the machine or the hour. Which package may use which is
 * held by {@code stirtide.ArchitectureTest} in demo-day, which sees all modules.
 */
class CodeRulesTest {
    private static final String[] PURE = {
        "stirtide.mixing..",
        "stirtide.planner.allowance..",
        "stirtide.planner.check..",
        "stirtide.planner.cost..",
        "stirtide.planner.day..",
        "stirtide.planner.planning..",
        "stirtide.planner.stock..",
        "stirtide.planner.swatch..",
        "stirtide.planner.views..",
        "stirtide.planner.visits.."
    };

    private static final JavaClasses MAIN = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("stirtide");
    private static final JavaClasses TESTS = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.ONLY_INCLUDE_TESTS)
            .importPackages("stirtide");

    @Test
    void the_pure_core_sees_no_edge() {
        noClasses()
                .that()
                .resideInAnyPackage(PURE)
                .and()
                .resideOutsideOfPackage("..cli..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "io.vertx..",
                        "java.io..",
                        "java.nio..",
                        "java.net..",
                        "java.sql..",
                        "java.util.concurrent..",
                        "com.fasterxml.jackson.core..",
                        "com.fasterxml.jackson.databind..",
                        "org.slf4j..",
                        "stirtide.planner.access..",
                        "stirtide.planner.admin..",
                        "stirtide.planner.cli..",
                        "stirtide.planner.eventlog..",
                        "stirtide.planner.http..",
                        "stirtide.planner.privacy..",
                        "stirtide.planner.salonfiles..",
                        "stirtide.planner.service..")
                .because("the core neither reads nor writes nor waits")
                .check(MAIN);
    }

    @Test
    void the_pure_core_asks_no_clock_and_no_chance() {
        noClasses()
                .that()
                .resideInAnyPackage(PURE)
                .and()
                .resideOutsideOfPackage("..cli..")
                .should()
                .callMethodWhere(clockOrChance())
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.Random")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.time.Clock")
                .because("time and chance are passed in")
                .check(MAIN);
    }

    private static DescribedPredicate<JavaCall<?>> clockOrChance() {
        var names = Set.of("now", "currentTimeMillis", "nanoTime", "randomUUID", "random", "systemDefault", "getenv");
        return DescribedPredicate.describe(
                "reads the clock, chance or the machine",
                call -> names.contains(call.getName())
                        && call.getTargetOwner().getPackageName().startsWith("java."));
    }

    @Test
    void the_day_is_worked_out_without_the_planner() {
        noClasses()
                .that()
                .resideInAPackage("stirtide.planner.day..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "stirtide.planner.views..", "stirtide.planner.planning.stagger..", "stirtide.planner.check..")
                .because("the day knows the question to the planner and the plan drawn, nothing of how it is drawn")
                .check(MAIN);
    }

    @Test
    void the_checker_shares_no_code_with_what_it_checks() {
        noClasses()
                .that()
                .resideInAPackage("stirtide.planner.check..")
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "draw the plan",
                        one -> one.getPackageName().equals("stirtide.planner.planning.stagger") && !isPartOfAProof(one)
                                || one.getPackageName().startsWith("stirtide.mixing")
                                || one.getPackageName().equals("stirtide.planner.planning.search")
                                        && !one.getName().startsWith("stirtide.planner.planning.search.PlanQuestion")))
                .allowEmptyShould(true)
                .check(MAIN);
    }

    /** What a proof speaks of: the problem, the plan, and the steps to be followed. */
    private static boolean isPartOfAProof(JavaClass one) {
        var records = Set.of(
                "StaggerProblem",
                "StaggerRun",
                "Assistant",
                "DutyWindow",
                "BowlRule",
                "Certificate",
                "Claim",
                "MinutePrices",
                "StaggerMix",
                "StaggerPlan",
                "StaggerScore");
        return records.contains(one.getSimpleName()) || one.getName().contains(".Certificate$");
    }

    /** CVE-2026-6860: the HTTP library remembers every server name it was ever asked for; see docs/dependencies.md. */
    @Test
    void certificates_are_not_chosen_by_server_name() {
        noClasses().should().callMethodWhere(target(name("setSni"))).check(MAIN);
    }

    @Test
    void no_test_is_switched_off() {
        noMethods().should().beAnnotatedWith(Disabled.class).check(TESTS);
        noClasses().should().beAnnotatedWith(Disabled.class).check(TESTS);
    }
}
