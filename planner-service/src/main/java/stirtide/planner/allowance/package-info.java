/**
 * How many grams to plan for a zone: learned from what earlier visits really used, most from the client's own. Works in
 * doubles inside; weights that leave the package are whole milligrams. Pure: it knows no day.
 *
 * <p>Read {@code Allowances}, {@code UsagePosterior}, {@code NormalInverseGamma}.
 */
@NullMarked
package stirtide.planner.allowance;

import org.jspecify.annotations.NullMarked;
