/**
 * Strengths of hydrogen peroxide in their three kinds, kept apart as types: per cent by weight, weight per volume, and
 * volumes of oxygen. Turning weight per volume into per cent by weight needs a density; turning volumes into grams
 * needs to say at which conditions the oxygen is measured. Pure.
 */
@NullMarked
package stirtide.planner.strength;

import org.jspecify.annotations.NullMarked;
