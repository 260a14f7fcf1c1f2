/** Inquiries to the planner: moves of services, earliest start, one more assistant. */
@NullMarked
package stirtide.bar.panels.planner;

import org.jspecify.annotations.NullMarked;
