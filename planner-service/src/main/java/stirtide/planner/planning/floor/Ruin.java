package stirtide.planner.planning.floor;

import java.util.random.RandomGenerator;

/** Chooses services that meet: close in time, of one stylist, on one chair, or late ones and what is around them. */
final class Ruin {
    /** Services without a place that one step tries to place. */
    private static final int MOST_MISSING = 8;

    private final FloorGrid grid;
    private final RandomGenerator random;
    /** The services chosen, in the order in which they shall be put back. */
    final int[] chosen;

    private int count;
    private final boolean[] isChosen;
    private final int[] byTime;
    private final int[] placeInTime;

    Ruin(FloorGrid grid, RandomGenerator random) {
        this.grid = grid;
        this.random = random;
        int n = grid.services.length;
        this.chosen = new int[n];
        this.isChosen = new boolean[n];
        this.byTime = grid.byTime;
        this.placeInTime = new int[n];
        for (int at = 0; at < n; at++) {
            placeInTime[byTime[at]] = at;
        }
    }

    /** Fills {@link #chosen} and says how many; some that are not placed are among them when asked for. */
    int choose(FloorState state, boolean missing, boolean wide) {
        count = 0;
        int size = Math.min(chosen.length, 1 + random.nextInt(wide ? 14 : 6));
        if (missing) {
            int first = random.nextInt(chosen.length);
            for (int k = 0; k < chosen.length && count < MOST_MISSING; k++) {
                int i = (first + k) % chosen.length;
                if (state.paths[i] == null) {
                    add(i);
                }
            }
        }
        int center = count > 0 && random.nextBoolean() ? chosen[random.nextInt(count)] : center(state);
        add(center);
        switch (random.nextInt(4)) {
            case 0 -> chain(grid.ofStylist[grid.services[center].service.stylist()], grid.stylistPlace[center], size);
            case 1 -> chain(grid.ofChair[grid.services[center].service.chair()], grid.chairPlace[center], size);
            default -> {}
        }
        int reach = size + 1 + random.nextInt(4);
        for (int tries = 0; count < size && tries < 20; tries++) {
            int at = placeInTime[center] + random.nextInt(2 * reach + 1) - reach;
            if (at >= 0 && at < byTime.length) {
                add(byTime[at]);
            }
        }
        if (wide) {
            if (random.nextBoolean()) {
                for (int i = count - 1; i > 0; i--) {
                    swap(i, random.nextInt(i + 1));
                }
            }
        } else {
            order();
        }
        for (int i = 0; i < count; i++) {
            isChosen[chosen[i]] = false;
        }
        return count;
    }

    private int center(FloorState state) {
        int one = random.nextInt(chosen.length);
        if (random.nextInt(3) > 0) {
            return one;
        }
        for (int tries = 0; tries < 8; tries++) {
            ServicePath path = state.paths[one];
            if (path != null && path.lateness > 0) {
                return one;
            }
            one = random.nextInt(chosen.length);
        }
        return one;
    }

    private void chain(int[] order, int place, int size) {
        int few = random.nextInt(4) == 0 ? order.length : 1 + random.nextInt(3);
        int from = Math.max(0, place - random.nextInt(few + 1));
        for (int at = from; at < order.length && at <= from + few && count < size; at++) {
            add(order[at]);
        }
    }

    private void add(int service) {
        if (!isChosen[service]) {
            isChosen[service] = true;
            chosen[count++] = service;
        }
    }

    private void order() {
        if (random.nextInt(3) == 0) {
            for (int i = count - 1; i > 0; i--) {
                swap(i, random.nextInt(i + 1));
            }
            return;
        }
        for (int i = 1; i < count; i++) {
            for (int k = i; k > 0 && placeInTime[chosen[k]] < placeInTime[chosen[k - 1]]; k--) {
                swap(k, k - 1);
            }
        }
        if (count > 1 && random.nextBoolean()) {
            int i = random.nextInt(count - 1);
            swap(i, i + 1);
        }
    }

    private void swap(int i, int k) {
        int one = chosen[i];
        chosen[i] = chosen[k];
        chosen[k] = one;
    }
}
