/**
 * The event log: a small port, {@link stirtide.planner.eventlog.EventLog}, with an embedded default and one in memory. An
 * append that has been answered is on the disk; every event carries the digest of all before it.
 */
@NullMarked
package stirtide.planner.eventlog;

import org.jspecify.annotations.NullMarked;
