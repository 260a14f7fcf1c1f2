package stirtide.bar.panels.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.bar.model.SetupRows;
import stirtide.bar.panels.FormPanel;
import stirtide.bar.panels.FormPanel.Outcome;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.SetupPiece;

/** Forms of developers and of lighteners with the directions of their leaflets. */
final class ProductForms {
    private static final List<String> FORMS = List.of("powder", "clay", "cream");
    private static final String LEAFLET_FIRST = "copy the numbers of the leaflet; a technique it permits comes next";
    private static final String LEAFLET = "copy the numbers of the leaflet, never numbers from memory";

    private ProductForms() {}

    static FormPanel developer(DaySetup setup, Optional<Developer> known) {
        var specs = List.of(
                SetupFields.name("name", known.map(Developer::name).orElse("")),
                SetupFields.percent(
                        "strength, %",
                        known.map(one -> SetupRows.plain(one.strengthHundredths(), 2))
                                .orElse("")),
                SetupFields.grams(
                        "pack, g",
                        known.map(one -> SetupRows.plain(one.packMilligrams(), 3))
                                .orElse("")),
                SetupFields.price(
                        "price of a pack",
                        setup.salon().currency(),
                        known.map(one -> one.packPrice().toPlainString()).orElse("")));
        return new FormPanel(
                "DEVELOPER", specs, "3 % is 10 vol, 6 % is 20 vol, 9 % is 30 vol, 12 % is 40 vol", texts -> {
                    String name = texts.get(0).strip();
                    String id =
                            known.map(Developer::developerId).orElseGet(() -> SetupFields.id(name, productIds(setup)));
                    var developer = new Developer(
                            id,
                            name,
                            SetupFields.hundredths(texts.get(1)),
                            SetupFields.milligrams(texts.get(2)),
                            SetupFields.money(texts.get(3)),
                            known.flatMap(Developer::countedMilligrams));
                    return SalonForms.send(new SetupPiece.OneDeveloper(developer), "developer " + name);
                });
    }

    private static List<String> productIds(DaySetup setup) {
        var ids = new ArrayList<>(List.of("water"));
        setup.developers().forEach(one -> ids.add(one.developerId()));
        setup.directions().forEach(one -> ids.add(one.lightenerId()));
        return ids;
    }

    static FormPanel lightener(DaySetup setup, Optional<Directions> known) {
        var specs = List.of(
                SetupFields.name("name", known.map(Directions::name).orElse("")),
                FormPanel.Spec.choice("form", FORMS, known.map(Directions::form).orElse("")),
                SetupFields.whole(
                        "working life, minutes",
                        "minutes",
                        known.map(one -> "" + one.workingLifeMinutes()).orElse("")),
                SetupFields.whole(
                        "minutes to mix",
                        "minutes",
                        known.map(one -> "" + one.mixMinutes()).orElse("")),
                SetupFields.yesNo(
                        "may be thinned with water",
                        known.map(Directions::waterPermitted).orElse(false)),
                SetupFields.grams(
                        "pack, g",
                        known.map(one -> SetupRows.plain(one.packMilligrams(), 3))
                                .orElse("")),
                SetupFields.price(
                        "price of a pack",
                        setup.salon().currency(),
                        known.map(one -> one.packPrice().toPlainString()).orElse("")),
                SetupFields.hoursBefore("strand test, hours before", hours(known.flatMap(Directions::strandTestHours))),
                SetupFields.hoursBefore("patch test, hours before", hours(known.flatMap(Directions::patchTestHours))),
                FormPanel.Spec.text(
                        "first caution",
                        300,
                        ".*\\S.*",
                        "a caution of the leaflet, 1 to 300 characters",
                        known.map(one -> one.cautions().isEmpty()
                                        ? ""
                                        : one.cautions().get(0))
                                .orElse("")));
        boolean technique = known.map(Directions::techniques).orElse(List.of()).isEmpty();
        String note = technique ? LEAFLET_FIRST : LEAFLET;
        var form = new FormPanel("LIGHTENER", specs, note, texts -> lightener(setup, known, texts));
        return technique ? form.leadingOn() : form;
    }

    private static String hours(Optional<Integer> hours) {
        return hours.map(String::valueOf).orElse("");
    }

    // A leaflet without a technique permits nothing, so a new lightener goes on to its first one.
    private static Outcome lightener(DaySetup setup, Optional<Directions> known, List<String> texts) {
        String name = texts.get(0).strip();
        var cautions = new ArrayList<>(known.map(Directions::cautions).orElse(List.of()));
        if (cautions.isEmpty()) cautions.add(texts.get(9).strip());
        else cautions.set(0, texts.get(9).strip());
        var directions = new Directions(
                known.map(Directions::lightenerId).orElseGet(() -> SetupFields.id(name, productIds(setup))),
                name,
                texts.get(1),
                Integer.parseInt(texts.get(2)),
                Integer.parseInt(texts.get(3)),
                texts.get(4).equals("yes"),
                known.map(Directions::techniques).orElse(List.of()),
                SetupFields.milligrams(texts.get(5)),
                SetupFields.money(texts.get(6)),
                known.flatMap(Directions::countedMilligrams),
                SetupFields.number(texts.get(7)),
                SetupFields.number(texts.get(8)),
                cautions);
        return directions.techniques().isEmpty()
                ? new Outcome.GoOn(technique(directions, Optional.empty()))
                : SalonForms.send(new SetupPiece.OneLightener(directions), "lightener " + name);
    }

    /** A technique of a leaflet, by its place in it; a new one comes last. */
    static FormPanel technique(Directions of, Optional<Integer> place) {
        Optional<TechniqueRule> known = place.map(of.techniques()::get);
        var specs = List.of(
                FormPanel.Spec.text(
                        "technique",
                        40,
                        "[a-z0-9][a-z0-9-]{0,39}",
                        "a word of small letters, such as foil, freehand or scalp",
                        known.map(TechniqueRule::technique).orElse("")),
                SetupFields.yesNo(
                        "on the scalp", known.map(TechniqueRule::onScalp).orElse(false)),
                SetupFields.ratio(
                        "lowest ratio",
                        known.map(one -> "1:" + SetupRows.plain(one.lowestRatioThousandths(), 3))
                                .orElse("1:")),
                SetupFields.ratio(
                        "highest ratio",
                        known.map(one -> "1:" + SetupRows.plain(one.highestRatioThousandths(), 3))
                                .orElse("1:")),
                SetupFields.percent(
                        "strongest developer, %",
                        known.map(one -> SetupRows.plain(one.highestStrengthHundredths(), 2))
                                .orElse("")),
                SetupFields.whole(
                        "longest to the rinse, minutes",
                        "minutes",
                        known.map(one -> "" + one.longestProcessingMinutes()).orElse("")));
        return new FormPanel("TECHNIQUE of " + of.name(), specs, LEAFLET, texts -> {
            var rule = new TechniqueRule(
                    texts.get(0),
                    texts.get(1).equals("yes"),
                    SetupFields.thousandths(texts.get(2)),
                    SetupFields.thousandths(texts.get(3)),
                    SetupFields.hundredths(texts.get(4)),
                    Integer.parseInt(texts.get(5)));
            var rules = new ArrayList<>(of.techniques());
            if (place.isPresent()) rules.set(place.get(), rule);
            else rules.add(rule);
            return SalonForms.send(
                    new SetupPiece.OneLightener(with(of, rules)), "technique " + rule.technique() + " of " + of.name());
        });
    }

    static Directions with(Directions of, List<TechniqueRule> rules) {
        return new Directions(
                of.lightenerId(),
                of.name(),
                of.form(),
                of.workingLifeMinutes(),
                of.mixMinutes(),
                of.waterPermitted(),
                rules,
                of.packMilligrams(),
                of.packPrice(),
                of.countedMilligrams(),
                of.strandTestHours(),
                of.patchTestHours(),
                of.cautions());
    }
}
