/** The services of the day, their visits and forms, and the booking of a walk-in. */
@NullMarked
package stirtide.bar.panels.services;

import org.jspecify.annotations.NullMarked;
