package stirtide;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every package of all modules and what it may depend on. What is pure is held by the test of the service. */
class ArchitectureTest {
    /** Package and what it may use, without "stirtide."; ".." stands for a package and all below it. */
    private static final Map<String, List<String>> MAY_USE = table("""
            bar: bar.canvas bar.cli bar.client bar.controller bar.keys bar.link bar.model bar.report bar.scale \
                bar.terminal bar.text bar.views events..
            bar.canvas:
            bar.cli: bar.canvas bar.client bar.keys bar.link bar.scale bar.terminal
            bar.client: events..
            bar.controller: bar.keys bar.link bar.model bar.panels.. bar.scale bar.text events..
            bar.keys:
            bar.link: bar.client bar.model events..
            bar.model: bar.canvas bar.keys bar.text events.. mixing..
            bar.panels: bar.canvas bar.keys bar.model bar.panels.. bar.text events..
            bar.panels.details: bar.canvas bar.keys bar.model bar.panels.. bar.text events.. mixing..
            bar.panels.form: bar.canvas bar.keys bar.model bar.text events..
            bar.panels.list: bar.canvas bar.keys bar.model bar.text
            bar.panels.planner: bar.canvas bar.keys bar.model bar.panels.. bar.text events..
            bar.panels.services: bar.canvas bar.keys bar.model bar.panels.. bar.text events..
            bar.panels.setup: bar.keys bar.model bar.panels.. bar.text events.. mixing..
            bar.panels.weighing: bar.canvas bar.keys bar.model bar.panels.. bar.text events.. mixing..
            bar.report: bar.model bar.text events..
            bar.scale:
            bar.terminal: bar.canvas bar.keys
            bar.text: events.. mixing..
            bar.views: bar.canvas bar.keys bar.model bar.panels.. bar.text events.. mixing..
            demo: bar.client demo.folder demo.live demo.print events.. planner.access planner.cli \
                planner.salonfiles.. planner.service
            demo.folder: bar.text demo.print events.. mixing.. planner.cli planner.day.. planner.planning.bounds \
                planner.planning.search planner.planning.whatif planner.salonfiles.. planner.views planner.visits
            demo.live: bar bar.client demo.folder demo.play demo.print events.. planner.cli planner.salonfiles.. \
                planner.service
            demo.play: bar.client events.. mixing..
            demo.print: bar.text demo.play events.. mixing.. planner.allowance planner.check planner.day.. \
                planner.planning.search planner.stock
            events.command: events.day events.formula events.setup
            events.day: events.formula events.plan events.setup
            events.formula:
            events.json: events.command events.day
            events.plan: events.formula
            events.setup:
            events.view: events.formula events.plan events.setup
            mixing.formula: events.. mixing.strength mixing.text mixing.weighing
            mixing.strength: events..
            mixing.text:
            mixing.weighing: events.. mixing.strength
            planner.access: events..
            planner.admin: events.. planner.access planner.cli planner.day.. planner.eventlog planner.http \
                planner.privacy
            planner.allowance: events.setup
            planner.check: events.. planner.check.stagger planner.planning.search planner.planning.stagger
            planner.check.floor: planner.planning.floor
            planner.check.stagger: planner.planning.stagger
            planner.cli: planner.access planner.eventlog
            planner.cost: events..
            planner.day: events.. planner.day..
            planner.day.allowance: events.. mixing.. planner.allowance planner.cost planner.day.. planner.visits
            planner.day.batch: events.. mixing.. planner.day..
            planner.day.booking: events.. planner.day..
            planner.day.bowl: events.. mixing.. planner.day..
            planner.day.chair: events.. planner.day..
            planner.day.history: events.. planner.day.. planner.swatch planner.visits
            planner.day.question: events.. planner.allowance planner.day.. planner.planning.search
            planner.day.setup: events.. mixing.. planner.allowance planner.day.. planner.swatch
            planner.day.state: events.. planner.allowance planner.stock planner.visits
            planner.day.stock: events.. planner.day.. planner.stock
            planner.eventlog: events..
            planner.http: events.. planner.access planner.day.. planner.planning.whatif
            planner.planning.bounds: events.. mixing.. planner.check planner.planning.search \
                planner.planning.stagger
            planner.planning.floor:
            planner.planning.floor.cli: planner.check.floor planner.planning.floor
            planner.planning.search: events.. mixing.. planner.planning.floor planner.planning.stagger
            planner.planning.stagger:
            planner.planning.stagger.cli: planner.check.stagger planner.cli planner.planning.floor.cli planner.planning.stagger
            planner.planning.whatif: events.. planner.day.. planner.planning.search planner.planning.stagger
            planner.privacy: events.. planner.access planner.day..
            planner.salonfiles: events.. planner.salonfiles..
            planner.salonfiles.calendar: events.. planner.salonfiles..
            planner.salonfiles.export: events.. planner.salonfiles..
            planner.salonfiles.json: events.. mixing.. planner.salonfiles..
            planner.salonfiles.rules: events.. mixing.. planner.salonfiles..
            planner.salonfiles.source: events..
            planner.service: events.. planner.access planner.cli planner.day.. planner.eventlog planner.http \
                planner.planning.bounds planner.planning.search planner.planning.stagger planner.planning.whatif \
                planner.privacy planner.salonfiles.. planner.views
            planner.stock: events.. mixing..
            planner.swatch: events.. mixing..
            planner.views: events.. mixing.. planner.allowance planner.cost planner.day.. planner.stock \
                planner.swatch planner.visits
            planner.visits: events.. mixing..
            """);

    private static final JavaClasses MAIN = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("stirtide");

    @Test
    void the_table_names_every_package_and_no_other() {
        assertThat(packages()).isEqualTo(MAY_USE.keySet());
    }

    @Test
    void every_package_uses_only_what_the_table_permits() {
        Set<String> wrong = new TreeSet<>();
        for (JavaClass one : MAIN)
            for (Dependency dependency : one.getDirectDependenciesFromSelf()) {
                String from = name(one);
                String to = name(dependency.getTargetClass().getBaseComponentType());
                if (to.startsWith(".") || from.equals(to)) continue;
                if (MAY_USE.getOrDefault(from, List.of()).stream().noneMatch(permitted -> covers(permitted, to)))
                    wrong.add(from + " uses " + to + ": " + dependency.getDescription());
            }
        assertThat(wrong).isEmpty();
    }

    @Test
    void packages_have_no_cycles() {
        slices().matching("stirtide.(**)").should().beFreeOfCycles().check(MAIN);
    }

    /** Rows of the page's tables that begin with a package. */
    @Test
    void the_architecture_page_lists_every_package() throws Exception {
        String page = Files.readString(Path.of("../docs/architecture.md"));
        Set<String> listed = Pattern.compile("^\\| `stirtide\\.([a-z.]+)` \\|", Pattern.MULTILINE)
                .matcher(page)
                .results()
                .map(row -> row.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(listed).isEqualTo(packages());
    }

    private static Set<String> packages() {
        return MAIN.stream().map(ArchitectureTest::name).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Name of a class's package without "stirtide."; of other packages it begins with a dot. */
    private static String name(JavaClass one) {
        String name = one.getPackageName();
        return name.startsWith("stirtide.") ? name.substring("stirtide.".length()) : "." + name;
    }

    private static boolean covers(String permitted, String name) {
        if (!permitted.endsWith("..")) return permitted.equals(name);
        String root = permitted.substring(0, permitted.length() - 2);
        return name.equals(root) || name.startsWith(root + ".");
    }

    private static Map<String, List<String>> table(String text) {
        Map<String, List<String>> table = new TreeMap<>();
        for (String line : text.lines().toList()) {
            String[] sides = line.split(":", 2);
            table.put(sides[0], List.of(sides[1].trim().split(" +")));
        }
        return table;
    }

    @Test
    void every_test_named_in_a_document_exists() throws IOException {
        Path root = Path.of("..");
        Set<String> named = new TreeSet<>();
        for (Path document : filesBelow(root.resolve("docs"), ".md")) named.addAll(testsNamedIn(document));
        named.addAll(testsNamedIn(root.resolve("DEVELOPERS.md")));
        Set<String> existing = new TreeSet<>();
        for (String module : List.of("events-schema", "planner-service", "tui-client", "demo-day"))
            for (Path source : filesBelow(root.resolve(module), ".java"))
                existing.add(source.getFileName().toString().replace(".java", ""));
        assertThat(named).hasSizeGreaterThan(20);
        named.removeAll(existing);
        assertThat(named).as("tests that documents name and that do not exist").isEmpty();
    }

    /** A file is named as {@code folder/Name}, with or without {@code .java}, after {@code .../} or the module. */
    @Test
    void every_file_named_on_the_architecture_page_exists() throws IOException {
        String sources = filesBelow(Path.of(".."), ".java").toString();
        List<String> named = Pattern.compile("`(?:\\S+/\\.\\.\\./)?((?:[a-z]+/)+[A-Z]\\w+)(?:\\.java)?`")
                .matcher(Files.readString(Path.of("../docs/architecture.md")))
                .results()
                .map(file -> file.group(1))
                .toList();
        assertThat(named)
                .hasSizeGreaterThan(40)
                .allSatisfy(file -> assertThat(sources).contains("/" + file + ".java"));
    }

    private static List<Path> filesBelow(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(ending)).toList();
        }
    }

    private static Set<String> testsNamedIn(Path document) throws IOException {
        return Pattern.compile("\\b[A-Z]\\w*[a-z](?:Test|IT)\\b")
                .matcher(Files.readString(document))
                .results()
                .map(MatchResult::group)
                .filter(name -> !name.equals("RecordTest"))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
