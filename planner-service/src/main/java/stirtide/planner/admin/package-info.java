/**
 * The command line of the operator: verifying, exporting, importing, backing up and restoring a log, clients' data, tokens
 * and codes. Of a running service it uses the administration server.
 */
@NullMarked
package stirtide.planner.admin;

import org.jspecify.annotations.NullMarked;
