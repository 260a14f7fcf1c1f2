package stirtide.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.UnaryOperator;

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
record Broken(String name, UnaryOperator<Folder> breakIt, String file, String place, String value, String accepted) {
    @Override
    public String toString() {
        return name;
    }

    /** Breaks a folder in the path and checks that exactly this problem is told, without a trace of our insides. */
    void check(Path path, Optional<LocalDate> date) {
        FolderAnswer.Rejected rejected = breakIt.apply(new Folder(path)).rejected(date);
        assertThat(rejected.lines()).hasSize(1).noneMatch(line -> line.contains("Exception") || line.contains("\n"));
        Problem problem = rejected.problems().get(0);
        assertThat(problem.file()).isEqualTo(file);
        assertThat(problem.place()).startsWith(place);
        assertThat(problem.value()).contains(value);
        assertThat(problem.accepted()).contains(accepted);
    }
}
