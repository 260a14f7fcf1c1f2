package stirtide.bar;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Test;

/** The terminal knows the contract and nothing of the service behind it. */
class ArchitectureTest {
    @Test
    void the_terminal_sees_the_contract_only() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("stirtide.planner..", "stirtide.demo..", "io.vertx..")
                .check(new ClassFileImporter().importPackages("stirtide.bar"));
    }

    @Test
    void no_test_is_switched_off() {
        noMethods()
                .should()
                .beAnnotatedWith(Disabled.class)
                .check(new ClassFileImporter().importPackages("stirtide.bar"));
    }
}
