/**
 * The event log: the port {@link stirtide.planner.eventlog.EventLog} and its SQLite adapter, its verification, backup and
 * maintenance. An append that has been answered is on the disk; every event carries the digest of all before it.
 */
@NullMarked
package stirtide.planner.eventlog;

import org.jspecify.annotations.NullMarked;
