package stirtide.planner.planning.stagger;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * People for all mixes, found by following every way to give them out, one mix after the other in the order of their starts. Ways
 * after which the same people are at work until the same minutes are one. Exact while the ways are few; beyond that the first ones
 * are followed.
 */
final class RosterSearch {
    private static final int MOST_WAYS = 512;
    private static final int IDLE = Integer.MIN_VALUE;

    /** A mix to give to a person: its run, its bowl and its minutes. */
    record Job(int run, int bowl, int start, int end) {}

    /** A way so far: who mixes the last job, and until when each person is at work. */
    private record Way(@Nullable Way before, int person, int[] busyUntil) {}

    private RosterSearch() {}

    /** The person of each job, which are sorted by start; null if no way was found. */
    static int @Nullable [] people(List<Assistant> people, List<Job> jobs) {
        int[] idle = new int[people.size()];
        Arrays.fill(idle, IDLE);
        List<Way> ways = List.of(new Way(null, -1, idle));
        for (Job job : jobs) {
            Map<List<Integer>, Way> next = new LinkedHashMap<>();
            for (Way way : ways) {
                for (int p = 0; p < people.size() && next.size() < MOST_WAYS; p++) {
                    if (way.busyUntil[p] <= job.start() && people.get(p).onDuty(job.start(), job.end())) {
                        Way made = new Way(way, p, after(way, p, job));
                        next.putIfAbsent(Arrays.stream(made.busyUntil).boxed().toList(), made);
                    }
                }
            }
            if (next.isEmpty()) {
                return null;
            }
            ways = List.copyOf(next.values());
        }
        int[] by = new int[jobs.size()];
        Way way = ways.get(0);
        for (int i = by.length - 1; way != null && i >= 0; i--) {
            by[i] = way.person;
            way = way.before;
        }
        return by;
    }

    private static int[] after(Way way, int person, Job job) {
        int[] busyUntil = Arrays.stream(way.busyUntil)
                .map(until -> until > job.start() ? until : IDLE)
                .toArray();
        busyUntil[person] = job.end();
        return busyUntil;
    }
}
