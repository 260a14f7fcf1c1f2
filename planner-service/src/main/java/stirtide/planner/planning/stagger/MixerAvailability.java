package stirtide.planner.planning.stagger;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Who may mix in the states of a {@link JointSearch}: mixers without names, of which each minute holds so many, or the real
 * people with their windows. People are exact where breaks tear work apart that so many mixers could do; they make more states.
 */
final class MixerAvailability {
    /** Most mixes at one time in each minute. */
    private final int[] capacity;

    private final @Nullable List<Assistant> people;
    private final int origin;
    /** Whether two people are on duty alike from minute t on, at [one][other]: the least such t. */
    private final int[][] alikeFrom;

    final int count;

    private MixerAvailability(MinuteGrid grid, @Nullable List<Assistant> people, int count) {
        this.capacity = grid.capacity;
        this.people = people;
        this.origin = grid.origin;
        this.count = count;
        this.alikeFrom = new int[people == null ? 0 : count][count];
        for (int a = 0; a < alikeFrom.length; a++) {
            for (int b = 0; b < count; b++) {
                alikeFrom[a][b] = alikeFrom(grid, a, b);
            }
        }
    }

    /** As many mixers as the fullest minute holds. */
    static MixerAvailability unnamed(MinuteGrid grid) {
        int most = 0;
        for (int mixers : grid.capacity) {
            most = Math.max(most, mixers);
        }
        return new MixerAvailability(grid, null, most);
    }

    /** The people of the bar. */
    static MixerAvailability named(MinuteGrid grid) {
        List<Assistant> people = grid.problem.assistants();
        return new MixerAvailability(grid, people, people.size());
    }

    boolean areNamed() {
        return people != null;
    }

    int capacity(int minute) {
        return capacity[minute];
    }

    int minutes() {
        return capacity.length;
    }

    private static int alikeFrom(MinuteGrid grid, int a, int b) {
        int t = grid.horizon;
        while (t > 0 && rest(grid, a, t - 1).equals(rest(grid, b, t - 1))) {
            t--;
        }
        return t;
    }

    private static List<DutyWindow> rest(MinuteGrid grid, int person, int t) {
        int minute = t + grid.origin;
        return grid.problem.assistants().get(person).onDuty().stream()
                .filter(window -> window.toMinute() > minute)
                .map(window -> new DutyWindow(Math.max(window.fromMinute(), minute), window.toMinute()))
                .toList();
    }

    /**
     * The next mixer that may mix in {@code [t, t + minutes)}. Of people who are idle and on duty alike from t on only the first
     * is named.
     *
     * @param state minutes until which the mixers are at work from the given place on, 0 for idle
     * @param after the mixer named before, -1 for none
     * @return -1 if there is no more
     */
    int next(int[] state, int place, int after, int t, int minutes) {
        if (people == null && after >= 0 || !free(state, place, t, minutes)) {
            return -1;
        }
        for (int h = after + 1; h < count; h++) {
            boolean may =
                    state[place + h] == 0 && (people == null || people.get(h).onDuty(t + origin, t + minutes + origin));
            if (may && !likeOneBefore(state, place, h, t)) {
                return h;
            }
        }
        return -1;
    }

    private boolean likeOneBefore(int[] state, int place, int h, int t) {
        for (int g = 0; people != null && g < h; g++) {
            if (state[place + g] == 0 && alikeFrom[h][g] <= t) {
                return true;
            }
        }
        return false;
    }

    private boolean free(int[] state, int place, int t, int minutes) {
        for (int s = t; s < t + minutes; s++) {
            int left = capacity[s];
            for (int h = place; h < place + count; h++) {
                left -= state[h] > s ? 1 : 0;
            }
            if (left <= 0) {
                return false;
            }
        }
        return true;
    }
}
