package stirtide.planner.views;

import stirtide.events.formula.DeveloperPart;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.planner.day.state.Day;

/** Names and strengths of what is on the shelf. An id that is not on it stands for itself. */
final class ProductNames {
    private ProductNames() {}

    static String lightener(Day day, String lightenerId) {
        return day.opened().directions().stream()
                .filter(one -> one.lightenerId().equals(lightenerId))
                .map(Directions::name)
                .findFirst()
                .orElse(lightenerId);
    }

    static String liquid(Day day, String developerId) {
        return day.opened().developers().stream()
                .filter(one -> one.developerId().equals(developerId))
                .map(Developer::name)
                .findFirst()
                .orElse(developerId);
    }

    /** Hundredths of a per cent by weight; water has none. */
    static int strength(Day day, String developerId) {
        if (developerId.equals(DeveloperPart.WATER)) return 0;
        return day.opened().developers().stream()
                .filter(one -> one.developerId().equals(developerId))
                .mapToInt(Developer::strengthHundredths)
                .findFirst()
                .orElse(0);
    }
}
