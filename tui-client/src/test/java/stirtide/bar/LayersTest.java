package stirtide.bar;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import org.junit.jupiter.api.Test;

class LayersTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("stirtide.bar");

    @Test
    void the_terminal_knows_the_contract_only() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("stirtide.planner..", "io.vertx..", "io.netty..", "java.awt..")
                .check(CLASSES);
    }

    @Test
    void pictures_desk_and_panels_know_no_terminal_and_no_network() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        "stirtide.bar.canvas..",
                        "stirtide.bar.text..",
                        "stirtide.bar.keys..",
                        "stirtide.bar.model..",
                        "stirtide.bar.panels..",
                        "stirtide.bar.panels.setup..",
                        "stirtide.bar.views..",
                        "stirtide.bar.controller..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.googlecode.lanterna..", "java.net..", "java.nio.file..", "java.io..")
                .check(CLASSES);
    }

    @Test
    void packages_are_free_of_cycles() {
        SlicesRuleDefinition.slices()
                .matching("stirtide.bar.(*)..")
                .should()
                .beFreeOfCycles()
                .check(CLASSES);
    }
}
