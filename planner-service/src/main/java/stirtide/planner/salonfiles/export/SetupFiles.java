package stirtide.planner.salonfiles.export;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.day.Booking;
import stirtide.events.day.ClientTests;
import stirtide.events.setup.AllowancePolicy;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Person;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Span;
import stirtide.planner.salonfiles.SalonFolder;

/**
 * A setup as the files a salon supplies, the way back of {@link SalonFolder}. Hours are those of the one day, so shifts
 * are written for its weekday only.
 */
public final class SetupFiles {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter START = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmxxx", Locale.ROOT);

    private SetupFiles() {}

    /**
     * Text by file name; {@code bookings.json} only when there are bookings, {@code history.json} only when something is
     * remembered.
     */
    public static SortedMap<String, String> of(DaySetup setup, Collection<Booking> bookings) {
        SortedMap<String, String> files = new TreeMap<>();
        documents(setup).forEach((name, document) -> files.put(name, document.toPrettyString() + "\n"));
        if (!bookings.isEmpty())
            files.put("bookings.json", bookings(setup, bookings).toPrettyString() + "\n");
        if (setup.learned().memory().isPresent())
            files.put("history.json", HistoryFile.of(setup).toPrettyString() + "\n");
        return files;
    }

    public static SortedMap<String, ObjectNode> documents(DaySetup setup) {
        SortedMap<String, ObjectNode> documents = new TreeMap<>();
        documents.put("salon.json", salon(setup));
        ArrayNode developers = NODES.arrayNode();
        setup.developers().forEach(each -> developers.add(developer(each)));
        documents.put("developers.json", NODES.objectNode().set("developers", developers));
        for (Directions each : setup.directions())
            documents.put("directions/" + each.lightenerId() + ".json", directions(each));
        documents.put("menu.json", menu(setup.menu()));
        return documents;
    }

    private static ObjectNode salon(DaySetup setup) {
        ObjectNode node = NODES.objectNode()
                .put("salonId", setup.salon().salonId())
                .put("name", setup.salon().name())
                .put("zone", setup.salon().zone())
                .put("currency", setup.salon().currency())
                .put("chairs", setup.salon().chairs())
                .put("handOverMinutes", setup.salon().handOverMinutes())
                .put("washMinutes", setup.salon().washMinutes());
        setup.salon().oneMixTwoBowls().ifPresent(wanted -> node.put("oneMixTwoBowls", wanted));
        ArrayNode people = node.putArray("people");
        setup.salon().people().forEach(each -> people.add(person(each, setup)));
        ArrayNode scales = node.putArray("scales");
        setup.salon().scales().forEach(each -> scales.add(scale(each)));
        ArrayNode bowls = node.putArray("bowls");
        setup.salon().bowls().forEach(each -> bowls.add(bowl(each)));
        setup.allowances().ifPresent(policy -> node.set("allowances", allowances(policy)));
        return node;
    }

    private static ObjectNode allowances(AllowancePolicy policy) {
        ObjectNode node = NODES.objectNode();
        policy.fixedPermille().ifPresent(permille -> node.put("enoughPermille", permille));
        policy.waitingMinutePrice().ifPresent(minute -> node.put("waitingMinutePrice", price(minute)));
        node.set("shortGrams", thousandths(policy.shortMilligrams()));
        return node.put("halfLifeDays", policy.halfLifeDays());
    }

    private static ObjectNode person(Person person, DaySetup setup) {
        String weekday = setup.date().getDayOfWeek().name().substring(0, 3).toLowerCase(Locale.ROOT);
        ObjectNode node = NODES.objectNode()
                .put("personId", person.personId())
                .put("name", person.name())
                .put("role", person.role().name().toLowerCase(Locale.ROOT));
        ArrayNode shifts = node.putArray("shifts");
        for (Span span : person.onDuty()) {
            ObjectNode shift = shifts.addObject();
            shift.putArray("days").add(weekday);
            shift.put("from", clock(span.from().atZone(zone(setup)), setup, false));
            shift.put("to", clock(span.to().atZone(zone(setup)), setup, true));
        }
        return node;
    }

    private static ZoneId zone(DaySetup setup) {
        return ZoneId.of(setup.salon().zone());
    }

    private static String clock(ZonedDateTime at, DaySetup setup, boolean end) {
        boolean midnight = end
                && at.toLocalTime().equals(LocalTime.MIDNIGHT)
                && at.toLocalDate().isAfter(setup.date());
        return midnight ? "24:00" : CLOCK.format(at.truncatedTo(ChronoUnit.MINUTES));
    }

    private static ObjectNode scale(Scale scale) {
        ObjectNode node = NODES.objectNode()
                .put("scaleId", scale.scaleId())
                .put("accuracyClass", scale.accuracyClass().name())
                .put("limits", scale.inServiceLimits() ? "in service" : "initial")
                .put(
                        "weighing",
                        scale.weighing().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        node.set("minimumGrams", thousandths(scale.minimumMilligrams()));
        ArrayNode ranges = node.putArray("ranges");
        for (Scale.Range range : scale.ranges()) {
            ObjectNode each = ranges.addObject();
            each.set("maximumGrams", thousandths(range.maximumMilligrams()));
            each.set("divisionGrams", thousandths(range.divisionMilligrams()));
            each.set("verificationGrams", thousandths(range.verificationMilligrams()));
        }
        return node;
    }

    private static ObjectNode bowl(BowlSize bowl) {
        ObjectNode node = NODES.objectNode().put("bowlSizeId", bowl.bowlSizeId());
        node.set("usableGrams", thousandths(bowl.usableMilligrams()));
        node.set("residueGrams", thousandths(bowl.residueMilligrams()));
        return node.put("count", bowl.count());
    }

    private static ObjectNode developer(Developer developer) {
        ObjectNode node =
                NODES.objectNode().put("developerId", developer.developerId()).put("name", developer.name());
        node.set("strengthPercent", hundredths(developer.strengthHundredths()));
        node.set("packGrams", thousandths(developer.packMilligrams()));
        node.put("packPrice", price(developer.packPrice()));
        developer.countedMilligrams().ifPresent(counted -> node.set("countedGrams", thousandths(counted)));
        return node;
    }

    private static ObjectNode directions(Directions of) {
        ObjectNode node = NODES.objectNode()
                .put("lightenerId", of.lightenerId())
                .put("name", of.name())
                .put("form", of.form())
                .put("workingLifeMinutes", of.workingLifeMinutes())
                .put("mixMinutes", of.mixMinutes())
                .put("waterPermitted", of.waterPermitted());
        ArrayNode techniques = node.putArray("techniques");
        of.techniques().forEach(rule -> techniques.add(technique(rule)));
        node.set("packGrams", thousandths(of.packMilligrams()));
        node.put("packPrice", price(of.packPrice()));
        of.countedMilligrams().ifPresent(counted -> node.set("countedGrams", thousandths(counted)));
        of.strandTestHours().ifPresent(hours -> node.put("strandTestHours", hours));
        of.patchTestHours().ifPresent(hours -> node.put("patchTestHours", hours));
        ArrayNode cautions = node.putArray("cautions");
        of.cautions().forEach(cautions::add);
        return node;
    }

    private static ObjectNode technique(Directions.TechniqueRule rule) {
        ObjectNode node = NODES.objectNode()
                .put("technique", rule.technique())
                .put("onScalp", rule.onScalp())
                .put("lowestRatio", ratio(rule.lowestRatioThousandths()))
                .put("highestRatio", ratio(rule.highestRatioThousandths()));
        node.set("highestStrengthPercent", hundredths(rule.highestStrengthHundredths()));
        return node.put("longestProcessingMinutes", rule.longestProcessingMinutes());
    }

    private static ObjectNode menu(Menu menu) {
        ObjectNode node = NODES.objectNode();
        node.set("lengthFactors", factors(menu.lengthPermille()));
        node.set("densityFactors", factors(menu.densityPermille()));
        ArrayNode entries = node.putArray("entries");
        for (Menu.MenuEntry entry : menu.entries()) {
            ObjectNode each = entries.addObject().put("menuId", entry.menuId()).put("name", entry.name());
            ArrayNode zones = each.putArray("zones");
            entry.zones().forEach(zone -> zones.add(zone(zone)));
        }
        return node;
    }

    private static ObjectNode zone(Menu.MenuZone zone) {
        ObjectNode node = NODES.objectNode()
                .put("zone", zone.zone())
                .put("technique", zone.technique())
                .put("lightenerId", zone.lightenerId());
        node.set("strengthPercent", hundredths(zone.strengthHundredths()));
        node.put("ratio", ratio(zone.ratioThousandths()));
        node.set("baseGrams", thousandths(zone.baseMilligrams()));
        return node.put("applyMinutes", zone.applyMinutes())
                .put("gapMinutes", zone.gapMinutes())
                .put("processMinutes", zone.processMinutes())
                .put("section", zone.section());
    }

    private static ObjectNode factors(Map<String, Integer> permille) {
        ObjectNode node = NODES.objectNode();
        permille.forEach((word, factor) -> node.set(word, thousandths(factor)));
        return node;
    }

    private static ObjectNode bookings(DaySetup setup, Collection<Booking> bookings) {
        ObjectNode node = NODES.objectNode();
        ArrayNode list = node.putArray("bookings");
        for (Booking booking : bookings) {
            ObjectNode each = list.addObject()
                    .put("bookingUid", booking.bookingUid())
                    .put("menuId", booking.menuId())
                    .put("chair", booking.chair())
                    .put("start", START.format(booking.start().atZone(zone(setup))));
            if (!booking.clientRef().isEmpty()) each.put("clientRef", booking.clientRef());
            each.put("length", booking.length()).put("density", booking.density());
            booking.stylistId().ifPresent(id -> each.put("stylistId", id));
            if (booking.earlierMinutes() > 0) each.put("earlierMinutes", booking.earlierMinutes());
            if (booking.laterMinutes() > 0) each.put("laterMinutes", booking.laterMinutes());
            ClientTests tests = booking.tests().orElse(ClientTests.NONE);
            tests.strandTestAt().ifPresent(at -> each.put("strandTest", START.format(at.atZone(zone(setup)))));
            tests.patchTestAt().ifPresent(at -> each.put("patchTest", START.format(at.atZone(zone(setup)))));
            booking.asLastTime().ifPresent(again -> each.put("asLastTime", again));
        }
        return node;
    }

    static JsonNode thousandths(int value) {
        return decimal(value, 3);
    }

    static JsonNode hundredths(int value) {
        return decimal(value, 2);
    }

    static JsonNode decimal(int value, int decimals) {
        // A node of the factory would write 100 as 1E+2.
        return DecimalNode.valueOf(new BigDecimal(plain(BigDecimal.valueOf(value, decimals))));
    }

    static String ratio(int thousandths) {
        return "1:" + plain(BigDecimal.valueOf(thousandths, 3));
    }

    private static String price(BigDecimal price) {
        return price.toPlainString();
    }

    private static String plain(BigDecimal value) {
        return value.stripTrailingZeros().toPlainString();
    }
}
