package stirtide.planner.planning.floor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Some services of a day, worked out for a proof that forgets all others. */
final class ProofGroup {
    final FloorGrid grid;
    /** In the order of booking. */
    final ServiceGrid[] services;
    /** A service begins with at least this delay, for the chains of stylists and chairs of the whole day. */
    final int[] startDelay;
    /** The services before it of its stylist and on its chair, -1 if none. */
    final int[] stylistBefore;

    final int[] chairBefore;
    final int[] stylist;
    final ProofUnit[] units;
    /** First unit of each service; one more entry at the end. */
    final int[] firstUnit;

    final int[] serviceOf;
    final DutyStarts duty;
    final int leastOccupied;

    ProofGroup(FloorGrid grid, ChainBound chains, int[] members) {
        this.grid = grid;
        int n = members.length;
        this.services = new ServiceGrid[n];
        this.startDelay = new int[n];
        this.stylistBefore = new int[n];
        this.chairBefore = new int[n];
        this.stylist = new int[n];
        this.firstUnit = new int[n + 1];
        List<ProofUnit> all = new ArrayList<>();
        this.duty = new DutyStarts(grid);
        for (int i = 0; i < n; i++) {
            services[i] = grid.services[members[i]];
            startDelay[i] = chains.startDelay[members[i]];
            stylist[i] = services[i].service.stylist();
            stylistBefore[i] = -1;
            chairBefore[i] = -1;
            for (int before = 0; before < i; before++) {
                if (stylist[before] == stylist[i]) {
                    stylistBefore[i] = before;
                }
                if (services[before].service.chair() == services[i].service.chair()) {
                    chairBefore[i] = before;
                }
            }
            units(services[i], all);
            firstUnit[i + 1] = all.size();
        }
        this.units = all.toArray(ProofUnit[]::new);
        this.serviceOf = new int[units.length];
        for (int i = 0; i < n; i++) {
            Arrays.fill(serviceOf, firstUnit[i], firstUnit[i + 1], i);
        }
        this.leastOccupied =
                Arrays.stream(units).mapToInt(unit -> unit.occupied).min().orElse(0);
    }

    private void units(ServiceGrid service, List<ProofUnit> into) {
        int first = 0;
        for (int j = 1; j <= service.last; j++) {
            if (j == service.last || service.mix[j] != service.mix[first]) {
                into.add(new ProofUnit(grid, duty, service, first, j));
                first = j;
            }
        }
    }
}
