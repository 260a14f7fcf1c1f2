/**
 * The running service: its command line and start, the days in memory and the actors that change them, commands, plan jobs,
 * due events, and clients' data. It connects the core with the log and the HTTP handlers.
 */
@NullMarked
package stirtide.planner.service;

import org.jspecify.annotations.NullMarked;
