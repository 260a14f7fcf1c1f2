package stirtide.bar.model;

import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stirtide.bar.model.SetupRow.Part;
import stirtide.bar.text.CodeText;
import stirtide.bar.text.CountText;
import stirtide.bar.text.TimeText;
import stirtide.bar.text.WeightText;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Person;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Span;
import stirtide.mixing.text.AmountText;

/** What is in force, row by row: a heading for each part, below it its pieces, below those what they are made of. */
public final class SetupRows {
    private SetupRows() {}

    /** All rows; the same setup gives the same rows. */
    public static List<SetupRow> of(DaySetup setup) {
        var rows = new ArrayList<SetupRow>();
        var salon = setup.salon();
        head(
                rows,
                Part.SALON,
                salon.name() + ", " + CountText.of(salon.chairs(), "chair") + ", hand-over " + salon.handOverMinutes()
                        + " min"
                        + (salon.carriedByMixer() ? "" : " by others")
                        + ", wash " + salon.washMinutes() + " min, " + salon.currency()
                        + (salon.oneMixTwoBowls().orElse(false) ? ", one mix for two bowls" : ""));
        head(rows, Part.PEOPLE, none(salon.people()));
        for (Person one : salon.people()) piece(rows, Part.PEOPLE, one.personId(), person(one, setup));
        head(rows, Part.SCALES, none(salon.scales()));
        for (Scale one : salon.scales()) piece(rows, Part.SCALES, one.scaleId(), scale(one));
        head(rows, Part.BOWLS, none(salon.bowls()));
        for (var one : salon.bowls())
            piece(
                    rows,
                    Part.BOWLS,
                    one.bowlSizeId(),
                    one.bowlSizeId() + ": " + one.count() + " of " + AmountText.grams(one.usableMilligrams()) + ", "
                            + AmountText.grams(one.residueMilligrams()) + " stick to bowl and brush");
        head(rows, Part.DEVELOPERS, none(setup.developers()));
        for (var one : setup.developers())
            piece(
                    rows,
                    Part.DEVELOPERS,
                    one.developerId(),
                    WeightText.liquid(one.strengthHundredths(), one.name()) + ", pack "
                            + pack(one.packMilligrams(), one.packPrice(), salon.currency()));
        head(rows, Part.LIGHTENERS, none(setup.directions()));
        for (Directions one : setup.directions()) lightener(rows, one, salon.currency());
        head(
                rows,
                Part.HAIR,
                "length " + factors(setup.menu().lengthPermille()) + "; density "
                        + factors(setup.menu().densityPermille()));
        head(rows, Part.MENU, none(setup.menu().entries()));
        for (Menu.MenuEntry one : setup.menu().entries()) entry(rows, one, setup);
        return List.copyOf(rows);
    }

    private static void head(List<SetupRow> rows, Part part, String text) {
        rows.add(new SetupRow(part, "", Optional.empty(), text));
    }

    private static void piece(List<SetupRow> rows, Part part, String id, String text) {
        rows.add(new SetupRow(part, id, Optional.empty(), text));
    }

    private static String none(List<?> pieces) {
        return pieces.isEmpty() ? "none yet, n adds one" : "";
    }

    private static String person(Person one, DaySetup setup) {
        String hours = hours(one.onDuty(), ZoneId.of(setup.salon().zone()));
        return one.name() + ", " + one.role().name().toLowerCase(Locale.ROOT) + ", "
                + (hours.isEmpty() ? "no hours today" : hours);
    }

    /** Hours as they are typed: {@code 08:30-12:30 13:00-17:00}. */
    public static String hours(List<Span> onDuty, ZoneId zone) {
        return onDuty.stream().map(span -> hours(span, zone)).collect(Collectors.joining(" "));
    }

    private static String hours(Span span, ZoneId zone) {
        String to = TimeText.minute(span.to(), zone);
        return TimeText.minute(span.from(), zone) + "-" + (to.equals("00:00") ? "24:00" : to);
    }

    private static String scale(Scale one) {
        Scale.Range widest = one.ranges().get(one.ranges().size() - 1);
        return one.scaleId() + ": class " + one.accuracyClass() + ", up to "
                + AmountText.grams(widest.maximumMilligrams())
                + ", steps of "
                + AmountText.grams(one.ranges().get(0).divisionMilligrams()) + ", "
                + CodeText.words(one.weighing().name());
    }

    private static void lightener(List<SetupRow> rows, Directions one, String currency) {
        piece(
                rows,
                Part.LIGHTENERS,
                one.lightenerId(),
                one.name() + ", " + one.form() + ", life " + one.workingLifeMinutes() + " min, pack "
                        + pack(one.packMilligrams(), one.packPrice(), currency));
        for (int i = 0; i < one.techniques().size(); i++) {
            var rule = one.techniques().get(i);
            String text = rule.technique() + (rule.onScalp() ? " on scalp" : "") + " "
                    + AmountText.ratio(rule.lowestRatioThousandths()) + " to "
                    + AmountText.ratio(rule.highestRatioThousandths()) + ", up to "
                    + WeightText.strength(rule.highestStrengthHundredths()) + ", at most "
                    + rule.longestProcessingMinutes() + " min";
            rows.add(new SetupRow(Part.LIGHTENERS, one.lightenerId(), Optional.of(i), text));
        }
    }

    private static void entry(List<SetupRow> rows, Menu.MenuEntry one, DaySetup setup) {
        piece(
                rows,
                Part.MENU,
                one.menuId(),
                one.name() + ", " + CountText.of(one.zones().size(), "zone"));
        for (int i = 0; i < one.zones().size(); i++) {
            Menu.MenuZone zone = one.zones().get(i);
            String lightener =
                    setup.directions(zone.lightenerId()).map(Directions::name).orElse(zone.lightenerId());
            String text = zone.zone() + ": " + AmountText.grams(zone.baseMilligrams()) + " " + lightener + " "
                    + AmountText.ratio(zone.ratioThousandths()) + ", " + AmountText.percent(zone.strengthHundredths())
                    + ", " + zone.technique() + ", " + zone.applyMinutes() + "+" + zone.processMinutes() + " min";
            rows.add(new SetupRow(Part.MENU, one.menuId(), Optional.of(i), text));
        }
    }

    /** Factors as they are typed: {@code short 0.75, medium 1}. */
    public static String factors(Map<String, Integer> permille) {
        return permille.entrySet().stream()
                .map(one -> one.getKey() + " " + AmountText.number(one.getValue(), 3))
                .collect(Collectors.joining(", "));
    }

    private static String pack(int milligrams, BigDecimal price, String currency) {
        return AmountText.grams(milligrams) + " for " + price.toPlainString() + " " + currency;
    }
}
