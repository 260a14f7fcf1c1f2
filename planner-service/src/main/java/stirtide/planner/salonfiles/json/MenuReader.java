package stirtide.planner.salonfiles.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;

/** What {@code menu.json} says. */
public final class MenuReader {
    private final LocatedValue top;
    private final Menu menu;
    private final Set<String> otherCategories = new TreeSet<>();

    /** Reads a document that fits its schema and reports what it finds. */
    public MenuReader(LocatedJson json) {
        top = json.top();
        UniqueIds ids = new UniqueIds("menu");
        List<MenuEntry> entries = new ArrayList<>();
        for (LocatedValue item : top.items("entries")) {
            ids.take(item.at("menuId"));
            entries.add(entry(item));
        }
        menu = new Menu(entries, factors(top.at("lengthFactors")), factors(top.at("densityFactors")));
        for (LocatedValue other : top.items("otherCategories")) {
            if (ids.all().contains(other.node().textValue())) other.refuse("a category that is no menu id");
            otherCategories.add(other.node().textValue());
        }
    }

    public Menu menu() {
        return menu;
    }

    /** Calendar categories that have nothing to do with the bar. */
    public Set<String> otherCategories() {
        return otherCategories;
    }

    /** Where the entries stand in the file, in their order. */
    List<LocatedValue> entryItems() {
        return top.items("entries");
    }

    private static MenuEntry entry(LocatedValue item) {
        UniqueIds names = new UniqueIds("zone");
        List<MenuZone> zones = new ArrayList<>();
        for (LocatedValue each : item.items("zones")) {
            names.take(each.at("zone"));
            zones.add(zone(each));
        }
        return new MenuEntry(item.text("menuId"), item.text("name"), zones);
    }

    private static MenuZone zone(LocatedValue item) {
        return new MenuZone(
                item.text("zone"),
                item.text("technique"),
                item.text("lightenerId"),
                StrengthFields.strength(item, "strengthPercent", "volumes"),
                item.ratio("ratio"),
                item.thousandths("baseGrams"),
                item.whole("applyMinutes"),
                item.whole("gapMinutes", 0),
                item.whole("processMinutes"),
                item.whole("section"));
    }

    private static SortedMap<String, Integer> factors(LocatedValue item) {
        SortedMap<String, Integer> factors = new TreeMap<>();
        item.keys().forEach(key -> factors.put(key, item.thousandths(key)));
        return factors;
    }
}
