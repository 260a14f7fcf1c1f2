package stirtide.planner.salonfiles.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stirtide.planner.salonfiles.FolderResult;

/** Collects the problems of a folder and puts them in the order of files and lines. */
public final class ProblemCollector {
    private record Found(int rank, int line, int column, FileProblem problem) {}

    private final List<Found> found = new ArrayList<>();

    /** Adds a problem; rank is the place of its file in the order of reading. */
    void add(int rank, int line, int column, FileProblem problem) {
        found.add(new Found(rank, line, column, problem));
    }

    public boolean none() {
        return found.isEmpty();
    }

    public int count() {
        return found.size();
    }

    /** The refusal; only to be asked for when there is a problem. */
    public FolderResult.Rejected refusal() {
        List<FileProblem> sorted = found.stream()
                .sorted(Comparator.comparingInt(Found::rank)
                        .thenComparingInt(Found::line)
                        .thenComparingInt(Found::column)
                        .thenComparing(each -> each.problem().toString()))
                .map(Found::problem)
                .distinct()
                .toList();
        int shown = Math.min(sorted.size(), FolderResult.Rejected.MOST_SHOWN);
        return new FolderResult.Rejected(sorted.subList(0, shown), sorted.size() - shown);
    }
}
