package stirtide.bar.panels.services;

import java.util.List;
import java.util.stream.IntStream;
import stirtide.bar.model.Inquiry;
import stirtide.bar.panels.form.ChoiceField;
import stirtide.events.view.BookingChoices;
import stirtide.events.view.DayView;

/**
 * What can be chosen for a booking.
 *
 * @param choices what the salon offers
 * @param service a service of the menu
 * @param chair a chair, numbered from 1
 * @param length length of the hair
 * @param density density of the hair
 */
public record BookingFields(
        BookingChoices choices, ChoiceField service, ChoiceField chair, ChoiceField length, ChoiceField density) {
    /** The choices of a day, with medium hair picked. */
    public static BookingFields of(DayView day) {
        BookingChoices choices = day.choices();
        List<String> chairs = IntStream.rangeClosed(1, choices.chairs())
                .mapToObj(String::valueOf)
                .toList();
        List<String> menu =
                choices.menu().stream().map(BookingChoices.MenuChoice::name).toList();
        return new BookingFields(
                choices,
                new ChoiceField("service", menu, 0),
                new ChoiceField("chair", chairs, 0),
                medium("length", choices.lengths()),
                medium("density", choices.densities()));
    }

    private static ChoiceField medium(String label, List<String> words) {
        return new ChoiceField(label, words, Math.max(0, words.indexOf("medium")));
    }

    /** Picks what an inquiry was about. */
    void pick(Inquiry.Ask.WalkIn asked) {
        List<String> menu =
                choices.menu().stream().map(BookingChoices.MenuChoice::menuId).toList();
        service.pick(menu.indexOf(asked.menuId()));
        chair.pick(asked.chair() - 1);
        length.pick(choices.lengths().indexOf(asked.length()));
        density.pick(choices.densities().indexOf(asked.density()));
    }

    /** Id of the picked service. */
    public String menuId() {
        return choices.menu().get(service.picked()).menuId();
    }

    /** Number of the picked chair, from 1. */
    public int chairNumber() {
        return chair.picked() + 1;
    }
}
