package stirtide.planner.views;

import java.util.ArrayList;
import java.util.List;
import stirtide.events.setup.Directions;
import stirtide.planner.day.state.Day;

/**
 * Cautions shown with the first bowl of a product: the usual cautions of the trade, the tests its directions ask for, then
 * the cautions of its leaflet.
 */
final class Cautions {
    private static final List<String> ALWAYS = List.of(
            "The maker's leaflet, local rules and a licensed colorist's judgment come before this plan.",
            "Wear gloves and keep the mix out of eyes; if it gets in, rinse with water at once, for 15 minutes, and get"
                    + " medical help.",
            "If it burns or stings on the skin, rinse it out at once and ask the colorist.",
            "A foil that swells or gets hot: open it and rinse at once.",
            "No heat unless the leaflet allows it.",
            "Henna or hair colors with metal salts: ask before the first bowl, and test a strand first.",
            "Air the room and do not breathe the powder: persulfates can cause asthma. Trouble with breathing: stop, fresh"
                    + " air, medical help at once.",
            "Use a bowl and brush without metal.",
            "Never on lashes or brows, never on broken or sore skin.",
            "Never keep leftovers in a closed container: the gas can burst it.");

    private Cautions() {}

    static List<String> of(Day day, String lightenerId) {
        var cautions = new ArrayList<>(ALWAYS);
        day.opened().directions(lightenerId).ifPresent(directions -> addOwn(cautions, directions));
        return List.copyOf(cautions);
    }

    private static void addOwn(List<String> cautions, Directions directions) {
        directions
                .patchTestHours()
                .ifPresent(hours ->
                        cautions.add("The directions ask for a skin patch test at least " + hours + " hours before."));
        directions
                .strandTestHours()
                .ifPresent(hours ->
                        cautions.add("The directions ask for a strand test at least " + hours + " hours before."));
        cautions.addAll(directions.cautions());
    }
}
