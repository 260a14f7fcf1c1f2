package stirtide.bar.panels.setup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stirtide.bar.model.SetupRows;
import stirtide.bar.panels.FormPanel;
import stirtide.bar.panels.FormPanel.Outcome;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.SetupPiece;

/** Forms of bookable services and their zones. */
final class MenuForms {
    private MenuForms() {}

    static FormPanel entry(DaySetup setup, Optional<MenuEntry> known) {
        var specs = List.of(SetupFields.name("name", known.map(MenuEntry::name).orElse("")));
        String note = known.isPresent() ? "its zones stand below it in the list" : "its first zone comes next";
        var form = new FormPanel("SERVICE ON THE MENU", specs, note, texts -> {
            String name = texts.get(0).strip();
            if (known.isPresent()) {
                var renamed =
                        new MenuEntry(known.get().menuId(), name, known.get().zones());
                return SalonForms.send(new SetupPiece.OneMenuEntry(renamed), "service " + name);
            }
            var ids = setup.menu().entries().stream().map(MenuEntry::menuId).toList();
            return new Outcome.GoOn(
                    zone(setup, new MenuEntry(SetupFields.id(name, ids), name, List.of()), Optional.empty(), 0));
        });
        return known.isPresent() ? form : form.leadingOn();
    }

    /**
     * A zone of a service.
     *
     * @param place its place, empty for a new one
     * @param at where a new one is put
     */
    static FormPanel zone(DaySetup setup, MenuEntry of, Optional<Integer> place, int at) {
        Optional<MenuZone> known = place.map(of.zones()::get);
        var lighteners = lighteners(setup);
        var techniques = setup.directions().stream()
                .flatMap(one -> one.techniques().stream())
                .map(TechniqueRule::technique)
                .distinct()
                .toList();
        var specs = List.of(
                FormPanel.Spec.text(
                        "zone",
                        40,
                        ".*\\S.*",
                        "a name of 1 to 40 characters, such as crown",
                        known.map(MenuZone::zone).orElse("")),
                FormPanel.Spec.choice(
                        "lightener",
                        List.copyOf(lighteners.keySet()),
                        known.map(one -> name(lighteners, one.lightenerId())).orElse("")),
                FormPanel.Spec.choice(
                        "technique", techniques, known.map(MenuZone::technique).orElse("")),
                SetupFields.percent(
                        "developer, %",
                        known.map(one -> SetupRows.plain(one.strengthHundredths(), 2))
                                .orElse("")),
                SetupFields.ratio(
                        "ratio",
                        known.map(one -> "1:" + SetupRows.plain(one.ratioThousandths(), 3))
                                .orElse("1:")),
                SetupFields.grams(
                        "mix for medium hair, g",
                        known.map(one -> SetupRows.plain(one.baseMilligrams(), 3))
                                .orElse("")),
                minutes("minutes to apply", known.map(MenuZone::applyMinutes)),
                minutes(
                        "minutes of pause before",
                        known.map(MenuZone::gapMinutes).or(() -> Optional.of(0))),
                minutes("minutes to process", known.map(MenuZone::processMinutes)),
                SetupFields.whole(
                        "rinsed with section",
                        "numbers",
                        known.map(one -> "" + one.section()).orElse("1")));
        return new FormPanel(
                "ZONE of " + of.name(),
                specs,
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

    private static FormPanel.Spec minutes(String label, Optional<Integer> known) {
        return SetupFields.whole(label, "minutes", known.map(String::valueOf).orElse(""));
    }

    private static Outcome zone(
            MenuEntry of, Optional<Integer> place, int at, Map<String, String> lighteners, List<String> texts) {
        var zone = new MenuZone(
                texts.get(0).strip(),
                texts.get(2),
                lighteners.getOrDefault(texts.get(1), ""),
                SetupFields.hundredths(texts.get(3)),
                SetupFields.thousandths(texts.get(4)),
                SetupFields.milligrams(texts.get(5)),
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
