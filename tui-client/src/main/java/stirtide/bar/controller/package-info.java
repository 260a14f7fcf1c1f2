/**
 * The update loop: turns keys, messages of the service and the passing of time into commands and the state to draw. No
 * I/O, no clock, one thread. Start with BarController.
 */
@NullMarked
package stirtide.bar.controller;

import org.jspecify.annotations.NullMarked;
