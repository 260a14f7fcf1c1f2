package stirtide.planner.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects the problems of a folder and puts them in the order of files and lines. */
final class Problems {
    private record Found(int rank, int line, int column, Problem problem) {}

    private final List<Found> found = new ArrayList<>();

    /** Adds a problem; rank is the place of its file in the order of reading. */
    void add(int rank, int line, int column, Problem problem) {
        found.add(new Found(rank, line, column, problem));
    }

    boolean none() {
        return found.isEmpty();
    }

    int count() {
        return found.size();
    }

    /** The refusal; only to be asked for when there is a problem. */
    FolderAnswer.Rejected refusal() {
        List<Problem> sorted = found.stream()
                .sorted(Comparator.comparingInt(Found::rank)
                        .thenComparingInt(Found::line)
                        .thenComparingInt(Found::column)
                        .thenComparing(each -> each.problem().toString()))
                .map(Found::problem)
                .distinct()
                .toList();
        int shown = Math.min(sorted.size(), FolderAnswer.Rejected.MOST_SHOWN);
        return new FolderAnswer.Rejected(sorted.subList(0, shown), sorted.size() - shown);
    }
}
