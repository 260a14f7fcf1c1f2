package stirtide.demo;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Which package of the demo may use which. */
@AnalyzeClasses(packages = "stirtide.demo", importOptions = ImportOption.DoNotIncludeTests.class)
class DemoArchitectureTest {
    @ArchTest
    static final ArchRule packages_have_no_cycles =
            slices().matching("stirtide.(**)").should().beFreeOfCycles();

    /** The simulation sees the day as a terminal does. */
    @ArchTest
    static final ArchRule the_simulation_knows_nothing_of_the_planner_and_the_running_service = noClasses()
            .that()
            .resideInAPackage("stirtide.demo.play")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("stirtide.planner..", "stirtide.demo.live", "stirtide.demo.print");
}
