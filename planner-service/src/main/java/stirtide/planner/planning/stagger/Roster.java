package stirtide.planner.planning.stagger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import stirtide.planner.planning.stagger.RosterSearch.Job;

/**
 * Gives mixes to people. Enough mixers in every minute are not always enough: with several breaks a plan may need one person
 * twice. Mixes are given in order of their starts to the free person whose window ends first; where nobody free is on duty
 * long enough, two people exchange what they do from a moment at which both were free.
 */
final class Roster {
    /** How many mixes of one person an exchange may reach back over. */
    private static final int REACH_BACK = 12;

    private final List<Assistant> people;
    private final List<Job> jobs = new ArrayList<>();
    private final List<List<Job>> given = new ArrayList<>();

    private Roster(MinuteGrid grid, RunPath[] paths) {
        this.people = grid.problem.assistants();
        people.forEach(person -> given.add(new ArrayList<>()));
        for (RunGrid run : grid.runs) {
            RunPath path = paths[run.index];
            for (int k = 0; k < path.start.length; k++) {
                if (path.start[k] != RunPath.STYLIST) {
                    int start = path.start[k] + grid.origin;
                    jobs.add(new Job(run.index, k, start, start + run.mix));
                }
            }
        }
        jobs.sort(Comparator.comparingInt(Job::start));
    }

    /** People by run and bowl, or null if none were found. */
    static int @Nullable [][] assign(MinuteGrid grid, RunPath[] paths) {
        Roster roster = new Roster(grid, paths);
        if (!roster.giveAll() && !roster.search()) {
            return null;
        }
        int[][] byRun = new int[paths.length][];
        for (int r = 0; r < paths.length; r++) {
            byRun[r] = new int[paths[r].start.length];
            Arrays.fill(byRun[r], StaggerMix.STYLIST);
        }
        for (int person = 0; person < roster.given.size(); person++) {
            for (Job job : roster.given.get(person)) {
                byRun[job.run()][job.bowl()] = person;
            }
        }
        return byRun;
    }

    private boolean giveAll() {
        for (Job job : jobs) {
            int person = free(job);
            if (person < 0) {
                person = exchange(job);
            }
            if (person < 0) {
                return false;
            }
            given.get(person).add(job);
        }
        return true;
    }

    /** Where exchanges fail: gives all mixes out anew, following every way. */
    private boolean search() {
        int[] by = RosterSearch.people(people, jobs);
        given.forEach(List::clear);
        for (int i = 0; by != null && i < by.length; i++) {
            given.get(by[i]).add(jobs.get(i));
        }
        return by != null;
    }

    private int free(Job job) {
        int best = -1;
        int bestEnd = Integer.MAX_VALUE;
        for (int a = 0; a < people.size(); a++) {
            if (isFree(a, job) && onDuty(a, job) && windowEnd(a, job.start()) < bestEnd) {
                best = a;
                bestEnd = windowEnd(a, job.start());
            }
        }
        return best;
    }

    private boolean isFree(int person, Job job) {
        List<Job> own = given.get(person);
        return own.isEmpty() || own.get(own.size() - 1).end() <= job.start();
    }

    private boolean onDuty(int person, Job job) {
        return people.get(person).onDuty(job.start(), job.end());
    }

    private int windowEnd(int person, int minute) {
        int end = Integer.MAX_VALUE - 1;
        for (DutyWindow window : people.get(person).onDuty()) {
            if (window.covers(minute, minute + 1)) {
                end = Math.min(end, window.toMinute());
            }
        }
        return end;
    }

    private int exchange(Job job) {
        for (int busy = 0; busy < people.size(); busy++) {
            for (int idle = 0; idle < people.size() && onDuty(busy, job); idle++) {
                if (busy != idle && isFree(idle, job) && exchanged(busy, idle)) {
                    return busy;
                }
            }
        }
        return -1;
    }

    /** Goes back to moments at which both were free until one is found from which each could have done the other's work. */
    private boolean exchanged(int busy, int idle) {
        List<Job> a = given.get(busy);
        List<Job> b = given.get(idle);
        int i = a.size();
        int j = b.size();
        int last = Math.max(0, a.size() - REACH_BACK);
        while (i > last) {
            i--;
            if (!onDuty(idle, a.get(i))) {
                return false;
            }
            while (j > 0 && b.get(j - 1).end() > a.get(i).start()) {
                j--;
                if (!onDuty(busy, b.get(j))) {
                    return false;
                }
            }
            if (i == 0 || j == b.size() || a.get(i - 1).end() <= b.get(j).start()) {
                swap(a, i, b, j);
                return true;
            }
        }
        return false;
    }

    private static void swap(List<Job> a, int i, List<Job> b, int j) {
        List<Job> fromA = new ArrayList<>(a.subList(i, a.size()));
        List<Job> fromB = new ArrayList<>(b.subList(j, b.size()));
        a.subList(i, a.size()).clear();
        b.subList(j, b.size()).clear();
        a.addAll(fromB);
        b.addAll(fromA);
    }
}
