package stirtide.planner.salonfiles.json;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.PastVisit.PastZone;
import stirtide.events.setup.SalonMemory;
import stirtide.events.setup.SwatchTest;
import stirtide.events.setup.UseHistory;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.events.setup.UseHistory.PastUse;

/**
 * Reads {@code history.json}: what a salon knows from before it used this tool. A zone that is on the menu and whose visit
 * names length and density teaches grams too; any other is remembered only.
 */
public final class HistoryReader {
    private final Menu menu;
    private final List<PastUse> uses = new ArrayList<>();

    public HistoryReader(Menu menu) {
        this.menu = menu;
    }

    /** Reads a document that fits its schema and reports what it finds. */
    public UseHistory read(LocatedJson json) {
        List<PastVisit> visits = new ArrayList<>();
        json.top().items("visits").forEach(item -> visit(item).ifPresent(visits::add));
        List<SwatchTest> swatches = new ArrayList<>();
        json.top().items("swatches").forEach(item -> swatch(item).ifPresent(swatches::add));
        List<MixStrip> strips = new ArrayList<>();
        json.top().items("strips").forEach(item -> strip(item).ifPresent(strips::add));
        visits.sort(Comparator.comparing(PastVisit::on));
        swatches.sort(Comparator.comparing(SwatchTest::on));
        strips.sort(Comparator.comparing(MixStrip::on));
        uses.sort(Comparator.comparing(PastUse::on));
        return new UseHistory(
                uses,
                rules(json.top()),
                Optional.of(new SalonMemory(visits, swatches, strips, json.top().wholeIfAny("enoughPermille"))));
    }

    private List<AllowanceRule> rules(LocatedValue top) {
        List<AllowanceRule> rules = new ArrayList<>();
        for (LocatedValue item : top.items("allowances")) {
            boolean known = menu.entries().stream()
                    .filter(entry -> entry.menuId().equals(item.text("menuId")))
                    .flatMap(entry -> entry.zones().stream())
                    .anyMatch(zone -> zone.zone().equals(item.text("zone")));
            if (!known) item.at("zone").refuse("a zone of the menu entry " + item.text("menuId") + " (menu.json)");
            boolean again = rules.stream()
                    .anyMatch(rule -> rule.menuId().equals(item.text("menuId"))
                            && rule.zone().equals(item.text("zone")));
            if (again) item.at("zone").refuse(item.at("zone").shown() + " a second time", "one rule for each zone");
            Optional<LocalDate> from = item.has("learnedFrom") ? date(item, "learnedFrom") : Optional.empty();
            rules.add(new AllowanceRule(
                    item.text("menuId"), item.text("zone"), item.thousandthsIfAny("pinnedGrams"), from));
        }
        return rules;
    }

    private static Optional<LocalDate> date(LocatedValue item) {
        return date(item, "date");
    }

    private static Optional<LocalDate> date(LocatedValue item, String key) {
        try {
            return Optional.of(LocalDate.parse(item.text(key)));
        } catch (DateTimeException noSuchDate) {
            item.at(key).refuse("a date of the calendar, such as \"2027-03-12\"");
            return Optional.empty();
        }
    }

    private Optional<PastVisit> visit(LocatedValue item) {
        Optional<LocalDate> date = date(item);
        Optional<Integer> length = factor(item, "length", menu.lengthPermille());
        Optional<Integer> density = factor(item, "density", menu.densityPermille());
        UniqueIds names = new UniqueIds("zone");
        List<PastZone> zones = new ArrayList<>();
        for (LocatedValue each : item.items("zones")) {
            names.take(each.at("zone"));
            PastZone zone = zone(each);
            zones.add(zone);
            if (date.isPresent() && length.isPresent() && density.isPresent())
                use(item, date.get(), zone, length.get(), density.get());
        }
        return date.map(on -> new PastVisit(on, item.text("clientRef"), item.text("menuId"), zones));
    }

    private static PastZone zone(LocatedValue item) {
        int mixed = item.thousandths("mixedGrams");
        int used = item.thousandths("usedGrams");
        if (used > mixed)
            item.at("usedGrams")
                    .refuse("at most the grams mixed, " + item.at("mixedGrams").shown());
        return new PastZone(
                item.text("zone"),
                item.text("technique"),
                item.text("lightenerId"),
                item.hundredths("strengthPercent"),
                ratio(item),
                mixed,
                used,
                item.whole("applyMinutes"),
                item.whole("processMinutes"),
                item.wholeIfAny("rinsedAfterMinutes"),
                item.tenthsIfAny("levelBefore"),
                item.tenthsIfAny("levelAfter"));
    }

    private static int ratio(LocatedValue item) {
        int ratio = item.ratio("ratio");
        if (ratio == 0) item.at("ratio").refuse("more developer than none, such as \"1:1\"");
        return Math.max(1, ratio);
    }

    private void use(LocatedValue visit, LocalDate on, PastZone zone, int length, int density) {
        Optional<MenuZone> known = menu.entries().stream()
                .filter(entry -> entry.menuId().equals(visit.text("menuId")))
                .flatMap(entry -> entry.zones().stream())
                .filter(one -> one.zone().equals(zone.zone()))
                .findFirst();
        if (known.isEmpty()) return;
        uses.add(new PastUse(
                on,
                visit.text("menuId"),
                zone.zone(),
                visit.text("clientRef"),
                known.get().baseMilligrams(),
                length,
                density,
                zone.usedMilligrams(),
                false));
    }

    private static Optional<Integer> factor(LocatedValue visit, String key, Map<String, Integer> known) {
        if (!visit.has(key)) return Optional.empty();
        Optional<Integer> factor = Optional.ofNullable(known.get(visit.text(key)));
        if (factor.isEmpty()) visit.at(key).refuse("one of " + String.join(", ", known.keySet()) + " (menu.json)");
        return factor;
    }

    private static Optional<SwatchTest> swatch(LocatedValue item) {
        return date(item)
                .map(on -> new SwatchTest(
                        on,
                        item.text("lightenerId"),
                        ratio(item),
                        item.hundredths("strengthPercent"),
                        item.whole("minutes"),
                        item.tenths("levelBefore"),
                        item.tenths("levelAfter")));
    }

    private static Optional<MixStrip> strip(LocatedValue item) {
        return date(item)
                .map(on -> new MixStrip(
                        on,
                        item.text("lightenerId"),
                        ratio(item),
                        item.hundredths("strengthPercent"),
                        item.tenths("ph"),
                        item.tenths("chartStep")));
    }
}
