package stirtide.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import stirtide.planner.planning.stagger.Assistant;
import stirtide.planner.planning.stagger.DutyWindow;
import stirtide.planner.planning.stagger.PlainBowls;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;

/** Invented days for measurements, drawn by seed; minutes of the day from midnight unless said otherwise. */
final class InventedDays {
    private static final int NINE = 540;
    private static final int ONE_PM = 780;
    private static final int OPENS = 530;
    private static final int CLOSES = 1140;
    private static final int BREAK_MINUTES = 15;
    private static final int FIRST_START = 30;
    private static final int MOST_RUNS = 3;
    private static final int TIMES_NAMED = 4;
    private static final int HAND_OVER = 1;

    private InventedDays() {}

    /** Half of the clients start at nine, half at one, to the minute; each assistant has one break between. */
    static StaggerProblem unlevelled(int services, int people, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<StaggerRun> runs = new ArrayList<>();
        for (int service = 0; service < services; service++) {
            addService(runs, service < (services + 1) / 2 ? NINE : ONE_PM, random);
        }
        List<Assistant> assistants = new ArrayList<>();
        for (int a = 0; a < people; a++) {
            int pause = 660 + random.nextInt(90);
            assistants.add(new Assistant(List.of(new DutyWindow(OPENS, pause), new DutyWindow(pause + BREAK_MINUTES, CLOSES))));
        }
        return new StaggerProblem(HAND_OVER, StaggerProblem.PLAIN_MAX_WAIT_MINUTES, runs, assistants, people);
    }

    /**
     * Services of one to three runs, spread over a day from minute 0 so that all of them end in it; each assistant has one break.
     * Runs are added until their fewest bowls take the given share of the minutes on duty, or every service has three. Each
     * client names a few times, and the desk books the one at which the bar has least to do so far.
     */
    static StaggerProblem spread(int services, int people, int dayMinutes, int loadPercent, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<List<StaggerRun>> wanted = new ArrayList<>();
        long mixing = (long) loadPercent * people * (dayMinutes - BREAK_MINUTES) / 100;
        for (int i = 0; i < services || i < MOST_RUNS * services && mixing > 0; i++) {
            if (i < services) {
                wanted.add(new ArrayList<>());
            }
            StaggerRun run = run(i, 0, random.nextInt(15, 70), random);
            wanted.get(i % services).add(run);
            mixing -= (long) fewestBowls(run, HAND_OVER) * run.mixMinutes();
        }
        List<StaggerRun> runs = new ArrayList<>();
        long[] busy = new long[dayMinutes];
        wanted.forEach(service -> book(service, busy, runs, random));
        List<Assistant> assistants = new ArrayList<>();
        for (int a = 0; a < people; a++) {
            int pause = 180 + random.nextInt(240);
            assistants.add(new Assistant(List.of(new DutyWindow(0, pause), new DutyWindow(pause + BREAK_MINUTES, dayMinutes))));
        }
        return new StaggerProblem(HAND_OVER, StaggerProblem.PLAIN_MAX_WAIT_MINUTES, runs, assistants, people);
    }

    /** A day of one to four short runs that lie close together, one or two people with a break, and perhaps one scale for both. */
    static StaggerProblem small(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<StaggerRun> runs = new ArrayList<>();
        int count = random.nextInt(1, 5);
        for (int r = 0; r < count; r++) {
            int start = 20 + random.nextInt(8);
            int minutes = random.nextInt(2, 9);
            int mix = random.nextInt(1, 4);
            List<Integer> used = new ArrayList<>(List.of(0));
            for (int t = 0; t < minutes; t++) {
                used.add(used.get(t) + random.nextInt(0, 30));
            }
            PlainBowls bowls = new PlainBowls(random.nextInt(60, 160), 10, used);
            runs.add(new StaggerRun(r, start, start + minutes, mix, mix + random.nextInt(2, 8), bowls));
        }
        List<Assistant> assistants = new ArrayList<>();
        int people = random.nextInt(1, 3);
        for (int a = 0; a < people; a++) {
            int leaves = random.nextInt(15, 26);
            int back = leaves + random.nextInt(1, 5);
            assistants.add(new Assistant(List.of(new DutyWindow(0, leaves), new DutyWindow(back, 80))));
        }
        return new StaggerProblem(random.nextInt(0, 3), random.nextInt(0, 5), runs, assistants, random.nextInt(1, people + 1));
    }

    /** Books the runs of one service, one after the other; {@code busy} holds thousandths of a mix in each minute of the day. */
    private static void book(List<StaggerRun> service, long[] busy, List<StaggerRun> runs, SplittableRandom random) {
        int[] gaps = service.stream().mapToInt(run -> random.nextInt(10, 30)).toArray();
        int total = service.stream().mapToInt(StaggerRun::minutes).sum()
                + Arrays.stream(gaps).sum();
        int chosen = 0;
        long least = Long.MAX_VALUE;
        for (int i = 0; i < TIMES_NAMED; i++) {
            int start = random.nextInt(FIRST_START, busy.length - total);
            long most = Arrays.stream(busy, start, start + total).max().orElse(0);
            chosen = most < least ? start : chosen;
            least = Math.min(most, least);
        }
        for (int k = 0; k < gaps.length; k++) {
            StaggerRun run = service.get(k);
            int end = chosen + run.minutes();
            runs.add(new StaggerRun(runs.size(), chosen, end, run.mixMinutes(), run.workingLifeMinutes(), run.bowls()));
            for (int t = chosen; t < end; t++) {
                busy[t] += 1000L * fewestBowls(run, HAND_OVER) * run.mixMinutes() / run.minutes();
            }
            chosen = end + gaps[k];
        }
    }

    /** Fewest bowls that feed a run whose bowls are there in time. */
    static int fewestBowls(StaggerRun run, int handOverMinutes) {
        int life = run.workingLifeMinutes() - run.mixMinutes() - handOverMinutes;
        int bowls = 0;
        for (int from = 0; from < run.minutes(); bowls++) {
            int to = from + 1;
            while (to < run.minutes() && to - from < life && run.bowls().cost(from, to + 1) >= 0) {
                to++;
            }
            from = to;
        }
        return bowls;
    }

    /** One or two runs one after the other. */
    private static void addService(List<StaggerRun> runs, int startMinute, SplittableRandom random) {
        int start = startMinute;
        int count = random.nextInt(1, 3);
        for (int k = 0; k < count; k++) {
            int minutes = random.nextInt(15, 70);
            runs.add(run(runs.size(), start, minutes, random));
            start += minutes + random.nextInt(10, 30);
        }
    }

    private static StaggerRun run(int id, int start, int minutes, SplittableRandom random) {
        List<Integer> used = new ArrayList<>(List.of(0));
        int each = random.nextInt(10, 35);
        for (int t = 0; t < minutes; t++) {
            used.add(used.get(t) + each);
        }
        int life = random.nextInt(5, 11) * 5;
        PlainBowls bowls = new PlainBowls(random.nextInt(6, 11) * 100, 40, used);
        return new StaggerRun(id, start, start + minutes, random.nextInt(2, 6), life, bowls);
    }
}
