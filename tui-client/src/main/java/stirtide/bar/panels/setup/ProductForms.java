package stirtide.bar.panels.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.panels.form.CommandForm;
import stirtide.bar.panels.form.TextField;
import stirtide.bar.text.Ids;
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

    static CommandForm developer(DaySetup setup, Optional<Developer> known) {
        var fields = List.of(
                SetupFields.name(known, Developer::name),
                SetupFields.percent("strength, %", known, Developer::strengthHundredths),
                SetupFields.grams("pack, g", known, Developer::packMilligrams),
                SetupFields.price(setup.salon().currency(), known, Developer::packPrice));
        String note = "3 % is 10 vol, 6 % is 20 vol, 9 % is 30 vol, 12 % is 40 vol";
        return new CommandForm("DEVELOPER", fields, note, texts -> {
            String name = texts.get(0).strip();
            var developer = new Developer(
                    known.map(Developer::developerId).orElseGet(() -> Ids.of(name, productIds(setup))),
                    name,
                    FieldValues.hundredths(texts.get(1)),
                    FieldValues.milligrams(texts.get(2)),
                    FieldValues.money(texts.get(3)),
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

    static CommandForm lightener(DaySetup setup, Optional<Directions> known) {
        String caution =
                known.flatMap(one -> one.cautions().stream().findFirst()).orElse("");
        var fields = List.of(
                SetupFields.name(known, Directions::name),
                SetupFields.choice("form", FORMS, known, Directions::form),
                SetupFields.whole("working life, minutes", "minutes", known, Directions::workingLifeMinutes),
                SetupFields.whole("minutes to mix", "minutes", known, Directions::mixMinutes),
                SetupFields.yesNo("may be thinned with water", known, Directions::waterPermitted),
                SetupFields.grams("pack, g", known, Directions::packMilligrams),
                SetupFields.price(setup.salon().currency(), known, Directions::packPrice),
                SetupFields.hoursBefore("strand test, hours before", known.flatMap(Directions::strandTestHours)),
                SetupFields.hoursBefore("patch test, hours before", known.flatMap(Directions::patchTestHours)),
                new TextField(
                        "first caution", 300, ".*\\S.*", "a caution of the leaflet, 1 to 300 characters", caution));
        boolean needsTechnique =
                known.map(Directions::techniques).orElse(List.of()).isEmpty();
        String note = needsTechnique ? LEAFLET_FIRST : LEAFLET;
        var form = new CommandForm("LIGHTENER", fields, note, texts -> lightener(setup, known, texts));
        return needsTechnique ? form.firstOfTwo() : form;
    }

    // A leaflet without a technique permits nothing, so a new lightener goes on to its first one.
    private static UiEffect lightener(DaySetup setup, Optional<Directions> known, List<String> texts) {
        String name = texts.get(0).strip();
        var cautions = new ArrayList<>(known.map(Directions::cautions).orElse(List.of()));
        if (cautions.isEmpty()) cautions.add(texts.get(9).strip());
        else cautions.set(0, texts.get(9).strip());
        var directions = new Directions(
                known.map(Directions::lightenerId).orElseGet(() -> Ids.of(name, productIds(setup))),
                name,
                texts.get(1),
                Integer.parseInt(texts.get(2)),
                Integer.parseInt(texts.get(3)),
                texts.get(4).equals("yes"),
                known.map(Directions::techniques).orElse(List.of()),
                FieldValues.milligrams(texts.get(5)),
                FieldValues.money(texts.get(6)),
                known.flatMap(Directions::countedMilligrams),
                FieldValues.number(texts.get(7)),
                FieldValues.number(texts.get(8)),
                cautions);
        return directions.techniques().isEmpty()
                ? new UiEffect.Open(technique(directions, Optional.empty()))
                : SalonForms.send(new SetupPiece.OneLightener(directions), "lightener " + name);
    }

    /** A technique of a leaflet, by its place in it; a new one comes last. */
    static CommandForm technique(Directions of, Optional<Integer> place) {
        Optional<TechniqueRule> known = place.map(of.techniques()::get);
        var fields = List.of(
                new TextField(
                        "technique",
                        40,
                        "[a-z0-9][a-z0-9-]{0,39}",
                        "a word of small letters, such as foil, freehand or scalp",
                        known.map(TechniqueRule::technique).orElse("")),
                SetupFields.yesNo("on the scalp", known, TechniqueRule::onScalp),
                SetupFields.ratio("lowest ratio", known, TechniqueRule::lowestRatioThousandths),
                SetupFields.ratio("highest ratio", known, TechniqueRule::highestRatioThousandths),
                SetupFields.percent("strongest developer, %", known, TechniqueRule::highestStrengthHundredths),
                SetupFields.whole(
                        "longest to the rinse, minutes", "minutes", known, TechniqueRule::longestProcessingMinutes));
        return new CommandForm("TECHNIQUE of " + of.name(), fields, LEAFLET, texts -> {
            var rule = new TechniqueRule(
                    texts.get(0),
                    texts.get(1).equals("yes"),
                    FieldValues.thousandths(texts.get(2)),
                    FieldValues.thousandths(texts.get(3)),
                    FieldValues.hundredths(texts.get(4)),
                    Integer.parseInt(texts.get(5)));
            var rules = new ArrayList<>(of.techniques());
            if (place.isPresent()) rules.set(place.get(), rule);
            else rules.add(rule);
            return SalonForms.send(
                    new SetupPiece.OneLightener(of.withTechniques(rules)),
                    "technique " + rule.technique() + " of " + of.name());
        });
    }
}
