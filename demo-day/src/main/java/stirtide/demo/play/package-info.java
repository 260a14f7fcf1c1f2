/**
 * Simulation of the demo day: clients and stylists ({@link stirtide.demo.play.ChairSimulation}), assistants
 * ({@link stirtide.demo.play.BarSimulation}) and scripted changes ({@link stirtide.demo.play.ReceptionSimulation}). It sees the day
 * only as a terminal shows it and acts only by commands. Deviations come from a seed, so a played day can be repeated
 * byte for byte.
 */
@NullMarked
package stirtide.demo.play;

import org.jspecify.annotations.NullMarked;
