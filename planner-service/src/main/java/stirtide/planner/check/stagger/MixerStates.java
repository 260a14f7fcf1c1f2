package stirtide.planner.check.stagger;

import java.util.Arrays;
import java.util.List;
import stirtide.planner.planning.stagger.Assistant;
import stirtide.planner.planning.stagger.StaggerProblem;

/**
 * Who is at work in the states of a {@link SweepCheck}: after the runs a state lists until when, either of as many mixers as are
 * at work, in order, or of each person, 0 for no work.
 */
final class MixerStates {
    private final List<Assistant> people;
    private final boolean named;
    private final int[] mixers;
    private final int from;
    private final int place;

    /**
     * @param mixers how many can mix in each minute from {@code from}
     * @param named whether people are distinguished
     */
    MixerStates(StaggerProblem problem, int[] mixers, int from, boolean named) {
        this.people = problem.assistants();
        this.named = named;
        this.mixers = mixers;
        this.from = from;
        this.place = problem.runs().size();
    }

    /** The state before anything is mixed. */
    int[] idle() {
        return new int[place + (named ? people.size() : 0)];
    }

    /** How many choices of who mixes there are in a state. */
    int choices() {
        return named ? people.size() : 1;
    }

    /** Whether a choice can mix from t on. */
    boolean may(int[] state, int choice, int t, int minutes) {
        if (named && (state[place + choice] > t || !people.get(choice).onDuty(t, t + minutes))) {
            return false;
        }
        for (int s = t; s < t + minutes; s++) {
            if (s - from >= mixers.length || atWork(state, s) >= mixers[s - from]) {
                return false;
            }
        }
        return true;
    }

    /** How many are at work in a minute as far as the state shows. */
    int atWork(int[] state, int minute) {
        int busy = 0;
        for (int i = place; i < state.length; i++) {
            busy += state[i] > minute ? 1 : 0;
        }
        return busy;
    }

    /** The state in which the choice is at work until a minute. */
    int[] begin(int[] state, int choice, int until) {
        int[] made = Arrays.copyOf(state, named ? state.length : state.length + 1);
        made[named ? place + choice : state.length] = until;
        return made;
    }

    /** The state at minute t: who is done is idle again. */
    int[] pass(int[] state, int t) {
        int[] ends = Arrays.stream(state, place, state.length)
                .map(end -> end > t ? end : 0)
                .filter(end -> named || end > 0)
                .toArray();
        if (!named) {
            Arrays.sort(ends);
        }
        int[] made = Arrays.copyOf(state, place + ends.length);
        System.arraycopy(ends, 0, made, place, ends.length);
        return made;
    }
}
