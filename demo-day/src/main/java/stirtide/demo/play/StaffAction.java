package stirtide.demo.play;

import stirtide.events.command.DayCommand;

/**
 * Something somebody does now.
 *
 * @param actor person id
 * @param command what is sent to the service
 */
public record StaffAction(String actor, DayCommand command) {}
