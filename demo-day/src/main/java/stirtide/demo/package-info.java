/**
 * Commands that plan a folder, and print or play the busy day of an invented salon. The service runs in the same process and
 * is used over HTTP only, as by any other client.
 */
@NullMarked
package stirtide.demo;

import org.jspecify.annotations.NullMarked;
