package stirtide.planner.planning.floor;

/** What can be read off a {@link ProofState} about one service. */
final class ProofTimes {
    private final ProofGroup group;

    ProofTimes(ProofGroup group) {
        this.group = group;
    }

    boolean nothingToRinse(ProofState state, int i) {
        for (int before = group.stylistBefore[i]; before >= 0; before = group.stylistBefore[before]) {
            if (!state.isRinsed(before)) {
                return false;
            }
        }
        return true;
    }

    boolean stylistIsFree(ProofState state, int i) {
        for (int after = i + 1; after < group.services.length; after++) {
            if (group.stylist[after] == group.stylist[i] && state.isStarted(after) && !isFed(state, after)) {
                return false;
            }
        }
        return true;
    }

    boolean isFed(ProofState state, int i) {
        for (int u = group.firstUnit[i]; u < group.firstUnit[i + 1]; u++) {
            if (state.node[u] < group.units[u].last) {
                return false;
            }
        }
        return true;
    }

    int end(ProofState state, int i) {
        ServiceGrid service = group.services[i];
        return service.endBase[service.last] + state.delay[group.firstUnit[i + 1] - 1];
    }

    int wish(ProofState state, int i) {
        ServiceGrid service = group.services[i];
        return Math.max(service.lastWish + state.delay[group.firstUnit[i + 1] - 1], state.wish[i]);
    }

    int rinseAt(ProofState state, int i) {
        int at = Math.max(wish(state, i), Math.max(state.clock, state.basinFree[0]));
        at = Math.max(at, state.stylistFree[group.stylist[i]]);
        for (int after = i + 1; after < group.services.length; after++) {
            if (group.stylist[after] == group.stylist[i] && state.isStarted(after)) {
                at = Math.max(at, end(state, after));
            }
        }
        return at;
    }

    boolean waitsForRinse(ProofState state, int i) {
        int stylist = group.stylistBefore[i];
        int chair = group.chairBefore[i];
        return !state.isRinsed(i)
                && isFed(state, i)
                && (stylist < 0 || state.isRinsed(stylist) || isFed(state, stylist))
                && (chair < 0 || state.isRinsed(chair));
    }
}
