/**
 * An invented salon, one busy day of it, and the commands that print or play it. Starts the service in its own process
 * and then talks to it over HTTP only, like any other client.
 */
@NullMarked
package stirtide.demo;

import org.jspecify.annotations.NullMarked;
