package stirtide.planner.salonfiles.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects the problems of a folder and puts them in the order of files and lines. */
public final class ProblemCollector {
    private record Found(int rank, int line, int column, FileProblem problem) {}

    private final List<Found> found = new ArrayList<>();

    /** Adds a problem; rank is the place of its file in the order of reading. */
    public void add(int rank, int line, int column, FileProblem problem) {
        found.add(new Found(rank, line, column, problem));
    }

    /** Whether nothing was reported. */
    public boolean none() {
        return found.isEmpty();
    }

    /** How many problems were reported. */
    public int count() {
        return found.size();
    }

    /** All problems, each once, in the order of files and lines. */
    public List<FileProblem> inOrder() {
        return found.stream()
                .sorted(Comparator.comparingInt(Found::rank)
                        .thenComparingInt(Found::line)
                        .thenComparingInt(Found::column)
                        .thenComparing(each -> each.problem().toString()))
                .map(Found::problem)
                .distinct()
                .toList();
    }
}
