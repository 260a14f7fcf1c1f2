package stirtide.planner.salonfiles.rules;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.Scale;
import stirtide.planner.salonfiles.json.FieldPath;
import stirtide.planner.salonfiles.json.FieldPath.Located;
import stirtide.planner.salonfiles.json.MenuFile;
import stirtide.planner.salonfiles.json.SalonFile;
import stirtide.planner.salonfiles.json.SalonFile.WeeklyPerson;

/**
 * What each single field may hold, for records that were not read from a file: the ranges of the schemas, in their words.
 * Lists of a salon that is being set up may be empty. What belongs to the salon as a whole and cannot be changed on a
 * running day (zone, currency, allowances) is not looked at.
 */
public final class FieldRanges {
    private FieldRanges() {}

    /** Whether every field of a salon is in its range; what is not was refused. */
    public static boolean fit(SalonFile salon, FieldPath at) {
        FieldChecks check = new FieldChecks();
        check.id(salon.salonId(), at.at("salonId"));
        check.name(salon.name(), 80, at.at("name"));
        check.whole(salon.chairs(), 1, 100, "a whole number of chairs from 1 to 100", at.at("chairs"));
        check.minutes(salon.handOverMinutes(), 0, 30, at.at("handOverMinutes"));
        check.minutes(salon.washMinutes(), 0, 120, at.at("washMinutes"));
        check.size(salon.people(), 0, 200, "one to 200 people", at.at("people"));
        for (Located<WeeklyPerson> each : at.each("people", salon.people())) person(each.value(), each.path(), check);
        check.size(salon.scales(), 0, 20, "one to 20 scales", at.at("scales"));
        for (Located<Scale> each : at.each("scales", salon.scales())) scale(each.value(), each.path(), check);
        check.size(salon.bowls(), 0, 20, "one to 20 bowl sizes", at.at("bowls"));
        for (Located<BowlSize> each : at.each("bowls", salon.bowls())) bowl(each.value(), each.path(), check);
        return check.hold();
    }

    /** Whether every field of the developers is in its range; what is not was refused. */
    public static boolean fit(List<Developer> developers, FieldPath at) {
        FieldChecks check = new FieldChecks();
        check.size(developers, 0, 40, "one to 40 developers", at.at("developers"));
        for (Located<Developer> each : at.each("developers", developers)) {
            Developer developer = each.value();
            check.id(developer.developerId(), each.path().at("developerId"));
            check.name(developer.name(), 80, each.path().at("name"));
            check.strength(developer.strengthHundredths(), each.path().at("strengthPercent"));
            pack(developer.packMilligrams(), developer.packPrice(), developer.countedMilligrams(), each.path(), check);
        }
        return check.hold();
    }

    /** Whether every field of the directions is in its range; what is not was refused. */
    public static boolean fit(Directions directions, FieldPath at) {
        FieldChecks check = new FieldChecks();
        check.id(directions.lightenerId(), at.at("lightenerId"));
        check.name(directions.name(), 80, at.at("name"));
        check.oneOf(List.of("powder", "clay", "cream"), directions.form(), at.at("form"));
        check.minutes(directions.workingLifeMinutes(), 1, 480, at.at("workingLifeMinutes"));
        check.minutes(directions.mixMinutes(), 1, 30, at.at("mixMinutes"));
        check.size(directions.techniques(), 1, 20, "one to 20 techniques", at.at("techniques"));
        for (Located<TechniqueRule> each : at.each("techniques", directions.techniques()))
            technique(each.value(), each.path(), check);
        pack(directions.packMilligrams(), directions.packPrice(), directions.countedMilligrams(), at, check);
        check.hours(directions.strandTestHours(), at.at("strandTestHours"));
        check.hours(directions.patchTestHours(), at.at("patchTestHours"));
        check.size(directions.cautions(), 1, 20, "the leaflet's cautions, at least one sentence", at.at("cautions"));
        for (Located<String> each : at.each("cautions", directions.cautions()))
            check.text(each.value(), 300, "a sentence of 1 to 300 characters", each.path());
        return check.hold();
    }

    /** Whether every field of a menu is in its range; what is not was refused. */
    public static boolean fit(MenuFile menu, FieldPath at) {
        FieldChecks check = new FieldChecks();
        check.factors(menu.lengthFactors(), at.at("lengthFactors"));
        check.factors(menu.densityFactors(), at.at("densityFactors"));
        check.size(menu.entries(), 0, 200, "one to 200 bookable services", at.at("entries"));
        for (Located<MenuEntry> each : at.each("entries", menu.entries())) {
            MenuEntry entry = each.value();
            check.id(entry.menuId(), each.path().at("menuId"));
            check.name(entry.name(), 80, each.path().at("name"));
            check.size(
                    entry.zones(),
                    1,
                    20,
                    "one to 20 zones in order of application",
                    each.path().at("zones"));
            for (Located<MenuZone> zone : each.path().each("zones", entry.zones()))
                zone(zone.value(), zone.path(), check);
        }
        return check.hold();
    }

    private static void person(WeeklyPerson person, FieldPath at, FieldChecks check) {
        check.id(person.personId(), at.at("personId"));
        check.name(person.name(), 80, at.at("name"));
        check.size(person.shifts(), 0, 14, "shifts of the week, may be empty", at.at("shifts"));
    }

    private static void scale(Scale scale, FieldPath at, FieldChecks check) {
        check.id(scale.scaleId(), at.at("scaleId"));
        check.gramsFrom0(scale.minimumMilligrams(), 10_000, at.at("minimumGrams"));
        check.size(scale.ranges(), 1, 5, "one to five weighing ranges, smallest first", at.at("ranges"));
        for (Located<Scale.Range> each : at.each("ranges", scale.ranges())) {
            Scale.Range range = each.value();
            check.grams(range.maximumMilligrams(), 100_000, each.path().at("maximumGrams"));
            check.thousandths(
                    range.divisionMilligrams(),
                    1,
                    1_000_000,
                    "the step the scale shows (d), in grams: 1, 2 or 5 times a power of ten, at most three decimals",
                    each.path().at("divisionGrams"));
            check.thousandths(
                    range.verificationMilligrams(),
                    1,
                    1_000_000,
                    "the verification interval of the scale's plate (e), in grams: 1, 2 or 5 times a power of ten,"
                            + " not less than d",
                    each.path().at("verificationGrams"));
        }
    }

    private static void bowl(BowlSize bowl, FieldPath at, FieldChecks check) {
        check.id(bowl.bowlSizeId(), at.at("bowlSizeId"));
        check.grams(bowl.usableMilligrams(), 2000, at.at("usableGrams"));
        check.gramsFrom0(bowl.residueMilligrams(), 200, at.at("residueGrams"));
        check.whole(bowl.count(), 1, 200, "a whole number from 1 to 200", at.at("count"));
    }

    private static void technique(TechniqueRule rule, FieldPath at, FieldChecks check) {
        check.id(rule.technique(), at.at("technique"));
        check.ratio(rule.lowestRatioThousandths(), at.at("lowestRatio"));
        check.ratio(rule.highestRatioThousandths(), at.at("highestRatio"));
        check.strength(rule.highestStrengthHundredths(), at.at("highestStrengthPercent"));
        check.minutes(rule.longestProcessingMinutes(), 1, 240, at.at("longestProcessingMinutes"));
    }

    private static void zone(MenuZone zone, FieldPath at, FieldChecks check) {
        check.name(zone.zone(), 40, at.at("zone"));
        check.id(zone.technique(), at.at("technique"));
        check.id(zone.lightenerId(), at.at("lightenerId"));
        check.strength(zone.strengthHundredths(), at.at("strengthPercent"));
        check.ratio(zone.ratioThousandths(), at.at("ratio"));
        check.grams(zone.baseMilligrams(), 500, at.at("baseGrams"));
        check.minutes(zone.applyMinutes(), 1, 240, at.at("applyMinutes"));
        check.minutes(zone.gapMinutes(), 0, 240, at.at("gapMinutes"));
        check.minutes(zone.processMinutes(), 1, 240, at.at("processMinutes"));
        check.whole(
                zone.section(),
                1,
                20,
                "a whole number from 1 to 20; zones of one section are rinsed together",
                at.at("section"));
    }

    private static void pack(
            int milligrams, BigDecimal price, Optional<Integer> counted, FieldPath at, FieldChecks check) {
        check.grams(milligrams, 100_000, at.at("packGrams"));
        check.price(price.toPlainString(), at.at("packPrice"));
        counted.ifPresent(left -> check.thousandths(
                left,
                0,
                1_000_000_000,
                "grams counted on the shelf: 0 to 1000000, at most three decimals",
                at.at("countedGrams")));
    }
}
