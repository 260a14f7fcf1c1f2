package stirtide.planner.planning.stagger;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Random small days that an exhaustive search can still solve. */
final class SmallStaggerDays {
    private SmallStaggerDays() {}

    static StaggerProblem day(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<StaggerRun> runs = runs(random.nextInt(1, 5), random);
        List<Assistant> assistants = new ArrayList<>();
        int people = random.nextInt(1, 3);
        for (int a = 0; a < people; a++) {
            int leaves = random.nextInt(9, 16);
            assistants.add(new Assistant(
                    List.of(new DutyWindow(0, leaves), new DutyWindow(leaves + random.nextInt(1, 4), 60))));
        }
        return new StaggerProblem(random.nextInt(0, 2), 2, runs, assistants, random.nextInt(1, people + 1));
    }

    /** Two people who are called away again and again: hands enough, but not always somebody for a whole mix. */
    static StaggerProblem tornDay(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<StaggerRun> runs = runs(random.nextInt(2, 4), random);
        List<Assistant> assistants = new ArrayList<>();
        int people = 2;
        for (int a = 0; a < people; a++) {
            List<DutyWindow> windows = new ArrayList<>();
            for (int t = random.nextInt(0, 4); t < 30; ) {
                int end = t + random.nextInt(2, 7);
                windows.add(new DutyWindow(t, end));
                t = end + random.nextInt(0, 3);
            }
            assistants.add(new Assistant(windows));
        }
        return new StaggerProblem(1, 2, runs, assistants, people);
    }

    private static List<StaggerRun> runs(int count, SplittableRandom random) {
        List<StaggerRun> runs = new ArrayList<>();
        for (int r = 0; r < count; r++) {
            int start = 10 + random.nextInt(6);
            int minutes = random.nextInt(2, 6);
            int mix = random.nextInt(1, 4);
            int life = mix + random.nextInt(2, 6);
            List<Integer> used = new ArrayList<>(List.of(0));
            for (int t = 0; t < minutes; t++) {
                used.add(used.get(t) + random.nextInt(0, 30));
            }
            runs.add(new StaggerRun(
                    r, start, start + minutes, mix, life, new PlainBowls(random.nextInt(60, 140), 10, used)));
        }
        return runs;
    }
}
