/**
 * The people of the demo day: clients and stylists ({@link stirtide.demo.play.Floor}), assistants
 * ({@link stirtide.demo.play.Bar}) and what the script throws between. They only see the day as a terminal shows it and
 * only act through commands. Small deviations come from a seed, so a played day can be played again to the byte.
 */
@NullMarked
package stirtide.demo.play;

import org.jspecify.annotations.NullMarked;
