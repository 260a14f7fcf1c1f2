package stirtide.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import stirtide.planner.stagger.Assistant;
import stirtide.planner.stagger.PlainBowls;
import stirtide.planner.stagger.Problem;
import stirtide.planner.stagger.Run;
import stirtide.planner.stagger.Window;

/** Invented days for measurements, drawn by seed; minutes of the day from midnight unless said otherwise. */
final class InventedDays {
    private static final int NINE = 540;
    private static final int ONE_PM = 780;
    private static final int OPENS = 530;
    private static final int CLOSES = 1140;
    private static final int BREAK_MINUTES = 15;

    private InventedDays() {}

    /** Half of the clients start at nine, half at one, to the minute; each assistant has one break between. */
    static Problem unlevelled(int services, int people, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Run> runs = new ArrayList<>();
        for (int service = 0; service < services; service++) {
            addService(runs, service < (services + 1) / 2 ? NINE : ONE_PM, random);
        }
        List<Assistant> assistants = new ArrayList<>();
        for (int a = 0; a < people; a++) {
            int pause = 660 + random.nextInt(90);
            assistants.add(new Assistant(List.of(new Window(OPENS, pause), new Window(pause + BREAK_MINUTES, CLOSES))));
        }
        return new Problem(1, Problem.PLAIN_MAX_WAIT_MINUTES, runs, assistants, people);
    }

    /** Clients spread over ten hours from minute 0, each assistant with one break. */
    static Problem spread(int services, int people, int dayMinutes, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Run> runs = new ArrayList<>();
        for (int service = 0; service < services; service++) {
            addService(runs, 60 + random.nextInt(dayMinutes - 120), random);
        }
        List<Assistant> assistants = new ArrayList<>();
        for (int a = 0; a < people; a++) {
            int pause = 180 + random.nextInt(240);
            assistants.add(new Assistant(List.of(new Window(0, pause), new Window(pause + BREAK_MINUTES, 900))));
        }
        return new Problem(1, Problem.PLAIN_MAX_WAIT_MINUTES, runs, assistants, people);
    }

    /** One or two runs one after the other. */
    private static void addService(List<Run> runs, int startMinute, SplittableRandom random) {
        int start = startMinute;
        int count = random.nextInt(1, 3);
        for (int k = 0; k < count; k++) {
            int minutes = random.nextInt(15, 70);
            runs.add(run(runs.size(), start, minutes, random));
            start += minutes + random.nextInt(10, 30);
        }
    }

    private static Run run(int id, int start, int minutes, SplittableRandom random) {
        List<Integer> used = new ArrayList<>(List.of(0));
        int each = random.nextInt(10, 35);
        for (int t = 0; t < minutes; t++) {
            used.add(used.get(t) + each);
        }
        int life = random.nextInt(5, 11) * 5;
        PlainBowls bowls = new PlainBowls(random.nextInt(6, 11) * 100, 40, used);
        return new Run(id, start, start + minutes, random.nextInt(2, 6), life, bowls);
    }
}
