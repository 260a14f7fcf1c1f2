package stirtide.planner.views;

import java.math.BigDecimal;
import java.util.TreeMap;
import stirtide.events.view.DayTotals;
import stirtide.planner.day.bowl.BowlBalance;
import stirtide.planner.day.state.Day;

/** The day so far in figures. Only bowls that are done count, so every gram has found its place. */
final class TotalsCount {
    private TotalsCount() {}

    static DayTotals of(Day day) {
        int bowls = 0;
        int mixed = 0;
        int applied = 0;
        int residue = 0;
        var costs = new BowlCosts(day);
        var mixedCost = BigDecimal.ZERO;
        var overMixedCost = BigDecimal.ZERO;
        var byCause = new TreeMap<String, Integer>();
        for (var bowl : day.bowls().filter(bowl -> !bowl.live()).toList()) {
            var balance = BowlBalance.of(day, bowl);
            bowls++;
            mixedCost = mixedCost.add(costs.of(bowl, balance.mixedMilligrams()));
            overMixedCost = overMixedCost.add(costs.of(bowl, balance.leftMilligrams()));
            mixed += balance.mixedMilligrams();
            applied += balance.appliedMilligrams();
            residue += balance.residueMilligrams();
            bowl.closed()
                    .orElseThrow()
                    .cause()
                    .filter(cause -> balance.leftMilligrams() > 0)
                    .ifPresent(cause -> byCause.merge(cause.name(), balance.leftMilligrams(), Integer::sum));
        }
        int left = byCause.values().stream().mapToInt(Integer::intValue).sum();
        return new DayTotals(
                bowls, mixed, applied, residue, left, byCause, costs.rounded(mixedCost), costs.rounded(overMixedCost));
    }
}
