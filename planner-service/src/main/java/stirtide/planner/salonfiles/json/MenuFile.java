package stirtide.planner.salonfiles.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.SortedMap;
import stirtide.events.setup.Menu;

/**
 * {@code menu.json}: the bookable services.
 *
 * @param lengthFactors grams factor by hair length, in thousandths
 * @param densityFactors grams factor by hair density, in thousandths
 * @param entries the bookable services
 * @param otherCategories calendar categories that have nothing to do with the color bar
 */
public record MenuFile(
        SortedMap<String, Integer> lengthFactors,
        SortedMap<String, Integer> densityFactors,
        List<Menu.MenuEntry> entries,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> otherCategories) {

    /** The menu of a setup. */
    public static MenuFile of(Menu menu) {
        return new MenuFile(menu.lengthPermille(), menu.densityPermille(), menu.entries(), List.of());
    }

    /** The menu without the categories of other appointments. */
    public Menu menu() {
        return new Menu(entries, lengthFactors, densityFactors);
    }
}
