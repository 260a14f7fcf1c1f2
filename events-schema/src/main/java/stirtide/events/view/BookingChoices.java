package stirtide.events.view;

import java.util.List;

/** What a walk-in may be booked as: menu entries, hair lengths, hair densities, and chairs numbered from 1. */
public record BookingChoices(List<MenuChoice> menu, List<String> lengths, List<String> densities, int chairs) {
    /** One bookable service. */
    public record MenuChoice(String menuId, String name) {}
}
