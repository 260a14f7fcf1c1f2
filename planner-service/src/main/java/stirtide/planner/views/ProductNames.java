package stirtide.planner.views;

import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.planner.day.state.Day;

/** Names of products. An unknown id is shown as it is. */
final class ProductNames {
    private ProductNames() {}

    static String lightener(Day day, String lightenerId) {
        return day.opened().directions(lightenerId).map(Directions::name).orElse(lightenerId);
    }

    static String liquid(Day day, String developerId) {
        return day.opened().developer(developerId).map(Developer::name).orElse(developerId);
    }
}
