package stirtide.events.view;

import java.math.BigDecimal;
import java.util.SortedMap;

/** Mixed = applied + residue + left by cause, all in milligrams. Costs are in the salon's currency, in its digits. */
public record DayTotals(
        int bowlsMixed,
        int mixedMilligrams,
        int appliedMilligrams,
        int residueMilligrams,
        int overMixedMilligrams,
        SortedMap<String, Integer> overMixedByCause,
        BigDecimal mixedCost,
        BigDecimal overMixedCost) {}
