package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.UnaryOperator;
import stirtide.planner.salonfiles.source.FileProblem;

/**
 * A folder broken in one place, and the one problem that must be told.
 *
 * @param name what is broken
 * @param breakIt breaks a good folder
 * @param file file of the problem
 * @param place how its place begins
 * @param value part of the value told
 * @param accepted part of what is said to be accepted
 */
record BrokenFolder(
        String name, UnaryOperator<TestFolder> breakIt, String file, String place, String value, String accepted) {
    @Override
    public String toString() {
        return name;
    }

    /** Breaks a folder in the path and checks that exactly this problem is told, without a trace of our insides. */
    void check(Path path, Optional<LocalDate> date) {
        FolderResult.Rejected rejected = breakIt.apply(new TestFolder(path)).rejected(date);
        assertThat(rejected.lines()).hasSize(1).noneMatch(line -> line.contains("Exception") || line.contains("\n"));
        FileProblem problem = rejected.problems().get(0);
        assertThat(problem.file()).isEqualTo(file);
        assertThat(problem.place()).startsWith(place);
        assertThat(problem.value()).contains(value);
        assertThat(problem.accepted()).contains(accepted);
    }
}
