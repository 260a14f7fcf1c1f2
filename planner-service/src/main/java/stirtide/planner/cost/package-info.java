/** What mixes cost and how often an allowance should be enough. Money is exact decimals in one currency. Pure. */
@NullMarked
package stirtide.planner.cost;

import org.jspecify.annotations.NullMarked;
