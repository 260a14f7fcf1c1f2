package stirtide.planner.salonfiles.rules;

import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.planner.salonfiles.json.FieldPath;
import stirtide.planner.salonfiles.json.FieldPath.Located;
import stirtide.planner.salonfiles.json.FieldText;
import stirtide.planner.salonfiles.json.MenuFile;
import stirtide.planner.salonfiles.json.UniqueIds;

/** Rules of a menu on its own. */
public final class MenuFileRules {
    private MenuFileRules() {}

    /** Refuses what cannot be. */
    public static void check(MenuFile menu, FieldPath at) {
        UniqueIds ids = new UniqueIds("menu");
        for (Located<MenuEntry> entry : at.each("entries", menu.entries())) {
            ids.take(entry.value().menuId(), entry.path().at("menuId"));
            UniqueIds zones = new UniqueIds("zone");
            for (Located<MenuZone> zone :
                    entry.path().each("zones", entry.value().zones()))
                zones.take(zone.value().zone(), zone.path().at("zone"));
        }
        for (Located<String> category : at.each("otherCategories", menu.otherCategories()))
            if (ids.has(category.value()))
                category.path().refuse(FieldText.quoted(category.value()), "a category that is no menu id");
    }
}
