package stirtide.bar.panels.setup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.panels.form.CommandForm;
import stirtide.bar.panels.form.TextField;
import stirtide.bar.text.Ids;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.SetupPiece;

/** Forms of bookable services and their zones. */
final class MenuForms {
    private MenuForms() {}

    static CommandForm entry(DaySetup setup, Optional<MenuEntry> known) {
        var fields = List.of(SetupFields.name(known, MenuEntry::name));
        String note = known.isPresent() ? "its zones stand below it in the list" : "its first zone comes next";
        var form = new CommandForm("SERVICE ON THE MENU", fields, note, texts -> {
            String name = texts.get(0).strip();
            if (known.isPresent()) {
                var renamed =
                        new MenuEntry(known.get().menuId(), name, known.get().zones());
                return SalonForms.send(new SetupPiece.OneMenuEntry(renamed), "service " + name);
            }
            var ids = setup.menu().entries().stream().map(MenuEntry::menuId).toList();
            var added = new MenuEntry(Ids.of(name, ids), name, List.of());
            return new UiEffect.Open(zone(setup, added, Optional.empty(), 0));
        });
        return known.isPresent() ? form : form.firstOfTwo();
    }

    /**
     * A zone of a service.
     *
     * @param place its place, empty for a new one
     * @param at where a new one is put
     */
    static CommandForm zone(DaySetup setup, MenuEntry of, Optional<Integer> place, int at) {
        Optional<MenuZone> known = place.map(of.zones()::get);
        var lighteners = lighteners(setup);
        var techniques = setup.directions().stream()
                .flatMap(one -> one.techniques().stream())
                .map(TechniqueRule::technique)
                .distinct()
                .toList();
        String gap = known.map(one -> "" + one.gapMinutes()).orElse("0");
        String section = known.map(one -> "" + one.section()).orElse("1");
        var fields = List.of(
                new TextField(
                        "zone",
                        40,
                        ".*\\S.*",
                        "a name of 1 to 40 characters, such as crown",
                        known.map(MenuZone::zone).orElse("")),
                SetupFields.choice(
                        "lightener",
                        List.copyOf(lighteners.keySet()),
                        known,
                        one -> name(lighteners, one.lightenerId())),
                SetupFields.choice("technique", techniques, known, MenuZone::technique),
                SetupFields.percent("developer, %", known, MenuZone::strengthHundredths),
                SetupFields.ratio("ratio", known, MenuZone::ratioThousandths),
                SetupFields.grams("mix for medium hair, g", known, MenuZone::baseMilligrams),
                SetupFields.whole("minutes to apply", "minutes", known, MenuZone::applyMinutes),
                SetupFields.whole("minutes of pause before", "minutes", gap),
                SetupFields.whole("minutes to process", "minutes", known, MenuZone::processMinutes),
                SetupFields.whole("rinsed with section", "numbers", section));
        return new CommandForm(
                "ZONE of " + of.name(),
                fields,
                "zones of one section are rinsed together",
                texts -> zone(of, place, at, lighteners, texts));
    }

    /** Ids by name; of two of one name each has its id beside it. */
    private static Map<String, String> lighteners(DaySetup setup) {
        var names = setup.directions().stream().map(Directions::name).toList();
        Map<String, String> ids = new LinkedHashMap<>();
        for (Directions one : setup.directions()) {
            boolean alone = Collections.frequency(names, one.name()) == 1;
            ids.put(alone ? one.name() : one.name() + " (" + one.lightenerId() + ")", one.lightenerId());
        }
        return ids;
    }

    private static String name(Map<String, String> lighteners, String id) {
        return lighteners.entrySet().stream()
                .filter(one -> one.getValue().equals(id))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("");
    }

    private static UiEffect zone(
            MenuEntry of, Optional<Integer> place, int at, Map<String, String> lighteners, List<String> texts) {
        var zone = new MenuZone(
                texts.get(0).strip(),
                texts.get(2),
                lighteners.getOrDefault(texts.get(1), ""),
                FieldValues.hundredths(texts.get(3)),
                FieldValues.thousandths(texts.get(4)),
                FieldValues.milligrams(texts.get(5)),
                Integer.parseInt(texts.get(6)),
                Integer.parseInt(texts.get(7)),
                Integer.parseInt(texts.get(8)),
                Integer.parseInt(texts.get(9)));
        var zones = new ArrayList<>(of.zones());
        if (place.isPresent()) zones.set(place.get(), zone);
        else zones.add(Math.min(at, zones.size()), zone);
        return SalonForms.send(
                new SetupPiece.OneMenuEntry(new MenuEntry(of.menuId(), of.name(), zones)),
                "zone " + zone.zone() + " of " + of.name());
    }
}
