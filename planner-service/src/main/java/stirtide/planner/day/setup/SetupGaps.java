package stirtide.planner.day.setup;

import java.util.ArrayList;
import java.util.List;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Person;

/** What a setup still lacks before a service can be booked and planned. */
public final class SetupGaps {
    private SetupGaps() {}

    /** One sentence for each thing that is missing, in the order in which a salon is best set up; empty when complete. */
    public static List<String> of(DaySetup setup) {
        var gaps = new ArrayList<String>();
        var salon = setup.salon();
        if (salon.people().stream()
                .noneMatch(person -> person.role() == Person.Role.ASSISTANT
                        && !person.onDuty().isEmpty()))
            gaps.add("An assistant with hours on this day: only assistants mix.");
        if (salon.scales().isEmpty()) gaps.add("A scale at the bar, with the steps it shows.");
        if (salon.bowls().isEmpty()) gaps.add("A size of bowl, with what it holds and how many there are.");
        if (setup.developers().isEmpty()) gaps.add("A developer on the shelf.");
        if (setup.directions().isEmpty()) gaps.add("A lightener with the directions of its leaflet.");
        if (setup.menu().lengthPermille().isEmpty()
                || setup.menu().densityPermille().isEmpty())
            gaps.add("Factors for hair length and density; 1 leaves the grams as they are.");
        if (setup.menu().entries().isEmpty()) gaps.add("A service on the menu, zone by zone.");
        return List.copyOf(gaps);
    }
}
