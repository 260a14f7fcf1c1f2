package stirtide.planner.planning.floor;

import java.util.Arrays;

/** Raises the times of a state to what can still be, and says whether the budget can hold. */
final class ProofLowerBound {
    private static final int NEVER = HandlingCosts.NONE;

    private final ProofGroup group;
    private final boolean stylistsRinse;
    private final int[] mixAt;
    private final int[] end;
    private final int[] rinse;
    private final int[] late;
    private final int[] due;
    private final int[] length;
    private final int[] sortedDue;
    private final int[] sortedLength;
    private int jobs;
    private int budget;
    /** Services from this on are out of the way; what they come to is in the lateness of the state. */
    private int last;
    /** Lower bounds on the lateness of all services from each on. */
    final int[] tail;

    ProofLowerBound(ProofGroup group) {
        this.group = group;
        this.stylistsRinse = group.grid.day.stylistsRinse();
        this.mixAt = new int[group.grid.mixing.length];
        this.end = new int[group.services.length];
        this.rinse = new int[group.services.length];
        this.tail = new int[group.services.length + 1];
        this.late = new int[group.services.length];
        this.due = new int[group.services.length];
        this.length = new int[group.services.length];
        this.sortedDue = new int[group.services.length];
        this.sortedLength = new int[group.services.length];
    }

    /** From now on the given lateness is the most that is wanted, and the services from one on are out of the way. */
    void begin(int firstOut, int most) {
        last = firstOut;
        budget = most;
    }

    /** Raises what can be raised; false if no plan that goes on from the state keeps the budget. */
    boolean settle(ProofState state) {
        for (int mix = 0; mix < mixAt.length; mix++) {
            mixAt[mix] = NEVER;
            for (int a = 0; a < state.free.length; a++) {
                int from = Math.max(Math.max(state.free[a], state.clock), state.scaleFree);
                int at = MinuteSet.next(group.duty.ofMix(mix, a), from);
                mixAt[mix] = at < 0 ? mixAt[mix] : Math.min(mixAt[mix], at);
            }
        }
        int sum = state.lateness;
        int split = firstOfTail(state);
        int beforeTail = sum;
        jobs = 0;
        for (int i = 0; i < last && sum <= budget; i++) {
            if (i == split) {
                beforeTail = sum + Math.max(crowded(state), torn(state, split));
                if (beforeTail + tail[split] - tail[last] > budget) {
                    return false;
                }
            }
            if (!state.isRinsed(i)) {
                int least = service(state, i);
                if (least >= ProofUnit.HOPELESS) {
                    return false;
                }
                sum += least;
            }
        }
        return sum <= budget && sum + Math.max(crowded(state), torn(state, last)) <= budget;
    }

    /** From this service on no bowl of any is mixed. */
    private int firstOfTail(ProofState state) {
        int u = group.firstUnit[last];
        while (u > 0 && state.node[u - 1] == group.units[u - 1].first) {
            u--;
        }
        return u == 0 ? 0 : group.serviceOf[u - 1] + 1;
    }

    /** Least lateness of one service. */
    private int service(ProofState state, int i) {
        ServiceGrid service = group.services[i];
        int delay = startDelay(state, i);
        int next = -1;
        for (int u = group.firstUnit[i]; u < group.firstUnit[i + 1]; u++) {
            ProofUnit unit = group.units[u];
            delay = Math.max(delay, state.delay[u]);
            state.delay[u] = delay;
            if (state.node[u] < unit.last) {
                next = next < 0 ? u : next;
                int ready = mixAt[unit.mix] + unit.occupied - unit.startBase(state.node[u]);
                delay = unit.endDelay(state.node[u], Math.max(delay, ready));
            }
            if (delay >= ProofUnit.HOPELESS) {
                return delay;
            }
        }
        end[i] = service.endBase[service.last] + delay;
        rinse[i] = rinse(state, i, Math.max(service.lastWish + delay, state.wish[i]));
        int late = Math.max(delay, rinse[i] - service.latestWish());
        this.late[i] = late;
        if (next >= 0) {
            ProofUnit unit = group.units[next];
            length[jobs] = unit.occupied;
            due[jobs++] = unit.startBase(state.node[next]) + late - unit.occupied;
        } else if (!stylistsRinse) {
            length[jobs] = group.grid.day.rinseMinutes();
            due[jobs++] = service.latestWish() + late;
        }
        return late;
    }

    private int startDelay(ProofState state, int i) {
        int start = group.services[i].startBase[0];
        int delay = group.startDelay[i];
        int stylist = group.stylistBefore[i];
        if (stylist >= 0 && !state.isRinsed(stylist)) {
            delay = Math.max(delay, end[stylist] - start);
        }
        int chair = group.chairBefore[i];
        if (chair >= 0 && !state.isRinsed(chair)) {
            delay = Math.max(delay, rinse[chair] - start);
        }
        if (stylistsRinse && !state.isStarted(i)) {
            delay = Math.max(delay, state.stylistFree[group.stylist[i]] - start);
        }
        return delay;
    }

    private int rinse(ProofState state, int i, int wish) {
        int from = Math.max(wish, state.basinFree[0]);
        if (stylistsRinse) {
            return Math.max(from, Math.max(state.clock, state.stylistFree[group.stylist[i]]));
        }
        int first = NEVER;
        for (int a = 0; a < state.free.length; a++) {
            int at = MinuteSet.next(group.duty.ofRinse(a), Math.max(from, Math.max(state.free[a], state.clock)));
            first = at < 0 ? first : Math.min(first, at);
        }
        return first;
    }

    /** Minutes by which the next job of each service is late beyond what is counted, because assistants do one after the other: shortest jobs, earliest due. */
    private int crowded(ProofState state) {
        System.arraycopy(due, 0, sortedDue, 0, jobs);
        Arrays.sort(sortedDue, 0, jobs);
        int late = 0;
        if (state.free.length == 1) {
            System.arraycopy(length, 0, sortedLength, 0, jobs);
            Arrays.sort(sortedLength, 0, jobs);
            int now = state.free[0];
            for (int k = 0; k < jobs; k++) {
                late += Math.max(0, now - sortedDue[k]);
                now += sortedLength[k];
            }
            return late;
        }
        int now = Arrays.stream(state.free).min().orElse(0);
        for (int k = 0; k < jobs; k++) {
            late += Math.max(0, now + k / state.free.length * group.leastOccupied - sortedDue[k]);
        }
        return late;
    }

    /** Minutes beyond what is counted because a stylist rinses the last client either before the next head or after it. */
    private int torn(ProofState state, int services) {
        if (!stylistsRinse) {
            return 0;
        }
        int sum = 0;
        long used = 0;
        for (int next = 1; next < services; next++) {
            int i = group.stylistBefore[next];
            if (i < 0 || state.isRinsed(i) || state.isStarted(next) || (used >>> i & 1) != 0) {
                continue;
            }
            ServiceGrid service = group.services[next];
            int delay = rinse[i] + group.grid.day.rinseMinutes() - service.startBase[0];
            for (int u = group.firstUnit[next]; u < group.firstUnit[next + 1]; u++) {
                delay = group.units[u].endDelay(
                        state.node[u], Math.min(ProofUnit.HOPELESS, Math.max(delay, state.delay[u])));
            }
            int nextWaits = delay - late[next];
            int rinseWaits = Math.max(rinse[i], end[next]) - group.services[i].latestWish() - late[i];
            int least = Math.min(nextWaits, rinseWaits);
            if (least > 0) {
                sum += least;
                used |= 1L << next;
            }
        }
        return sum;
    }
}
