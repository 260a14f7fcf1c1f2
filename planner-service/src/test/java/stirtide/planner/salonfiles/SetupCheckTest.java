package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.setup.DaySetup;
import stirtide.planner.salonfiles.export.SetupFiles;
import stirtide.planner.salonfiles.source.FileProblem;

/** The rules for a changed setup refuse what the files and their schemas would refuse, in the same words. */
class SetupCheckTest {
    private static final List<String> FILES = List.of("salon.json", "developers.json", "directions", "menu.json");

    @TempDir
    Path temp;

    private final Map<String, String> written = new HashMap<>();

    /** Zone and currency cannot be changed on a running day, and lists of a salon that is being set up may be empty. */
    private static boolean isComparable(String variant) {
        return !variant.startsWith("/salon/zone")
                && !variant.startsWith("/salon/currency")
                && !Set.of(
                                "/salon/people empty",
                                "/salon/scales empty",
                                "/salon/bowls empty",
                                "/developers empty",
                                "/directions empty",
                                "/menu/entries empty")
                        .contains(variant)
                // More problems than a refusal lists.
                && !variant.endsWith("/zones of 15")
                // One file for each lightener: two of one id cannot be written.
                && !variant.startsWith("/directions with")
                && !variant.startsWith("/directions of");
    }

    @Test
    void every_setup_with_one_odd_value_is_refused_as_its_files_are() {
        TestFolder folder = new TestFolder(temp);
        FolderResult.Read good = folder.accepted(Optional.empty());
        folder.without("directions/dune-powder.json").without("directions/reef-clay.json");
        AtomicInteger variants = new AtomicInteger();
        SetupVariants.of(good.setup(), (name, setup) -> {
            if (!isComparable(name)) return;
            variants.incrementAndGet();
            Map<String, Set<String>> ofFiles = byFile(problemsOfFiles(folder, setup, good));
            Map<String, Set<String>> ofRecords = byFile(SetupCheck.problems(setup));
            // A file is checked against those before it only if those are accepted.
            String last =
                    FILES.stream().filter(ofFiles::containsKey).findFirst().orElse("menu.json");
            for (String file : FILES.subList(0, FILES.indexOf(last) + 1))
                assertThat(ofRecords.getOrDefault(file, Set.of()))
                        .as(name + " in " + file)
                        .isEqualTo(ofFiles.getOrDefault(file, Set.of()));
        });
        assertThat(variants).hasValueGreaterThan(700);
    }

    private List<FileProblem> problemsOfFiles(TestFolder folder, DaySetup setup, FolderResult.Read good) {
        int directions = 0;
        for (Map.Entry<String, String> file :
                SetupFiles.of(setup, good.bookings()).entrySet()) {
            // An odd id may be no name of a file.
            String name =
                    file.getKey().startsWith("directions/") ? "directions/" + directions++ + ".json" : file.getKey();
            if (!file.getValue().equals(written.put(name, file.getValue()))) folder.write(name, file.getValue());
        }
        FolderResult result = SalonFolder.read(temp, Optional.of(setup.date()));
        if (!(result instanceof FolderResult.Rejected rejected)) return List.of();
        assertThat(rejected.more()).as("problems that are not listed").isZero();
        return rejected.problems();
    }

    private static Map<String, Set<String>> byFile(List<FileProblem> problems) {
        return problems.stream()
                .filter(problem -> !problem.value().startsWith("no person who mixes"))
                .collect(Collectors.groupingBy(
                        problem -> problem.file().replaceFirst("/.*", ""),
                        Collectors.mapping(
                                problem -> problem.place().replaceFirst(" line .*", "") + ": " + problem.value() + ": "
                                        + problem.accepted().replaceFirst("directions/\\S+", "directions"),
                                Collectors.toCollection(TreeSet::new))));
    }
}
