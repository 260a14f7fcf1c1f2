package stirtide.planner.salonfiles.calendar;

import biweekly.component.VEvent;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stirtide.events.day.ClientTests;
import stirtide.events.setup.Menu;
import stirtide.planner.salonfiles.source.BookingLocation.Part;
import stirtide.planner.salonfiles.source.FileProblem;
import stirtide.planner.salonfiles.source.LocalTimes;

/**
 * What an event says about its service, in properties every calendar has: CATEGORIES names the menu entry, LOCATION the
 * chair, and lines of DESCRIPTION such as {@code length: long} the rest.
 */
final class EventFields {
    private static final int LONGEST_CLIENT = 12;
    private static final Pattern CHAIR =
            Pattern.compile("\\s*(?:chair\\s*)?([0-9]{1,3})\\s*", Pattern.CASE_INSENSITIVE);
    private static final Pattern FIELD = Pattern.compile(
            "\\s*(length|density|client|stylist|earlier|later|strand test|patch test|formula)\\s*:\\s*(.*?)\\s*",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern MINUTES =
            Pattern.compile("([0-9]{1,3})(?:\\s*min(?:utes)?)?", Pattern.CASE_INSENSITIVE);
    private static final int MOST_MINUTES = 240;

    private final LocatedEvent event;
    private final Map<String, String> lines = new LinkedHashMap<>();
    private boolean complete = true;

    EventFields(LocatedEvent event) {
        this.event = event;
        String description = event.event().getDescription() == null
                ? ""
                : event.event().getDescription().getValue();
        for (String line : description.replaceAll("(?i)<br\\s*/?>", "\n").split("\\R", -1)) {
            Matcher field = FIELD.matcher(line);
            if (!field.matches()) continue;
            String key = field.group(1).toLowerCase(Locale.ROOT);
            if (lines.putIfAbsent(key, field.group(2)) != null) {
                refuse(Part.LENGTH, "\"" + key + ":\" a second time", "each of these lines once");
            }
        }
    }

    /** All categories of an event, without surrounding blanks. */
    static List<String> categories(VEvent event) {
        List<String> all = new ArrayList<>();
        event.getCategories().forEach(each -> each.getValues().forEach(value -> all.add(value.strip())));
        return all.stream().filter(value -> !value.isEmpty()).toList();
    }

    /** Whether everything asked for so far was found. */
    boolean complete() {
        return complete;
    }

    String menuId(Menu menu) {
        List<String> ids = menu.entries().stream().map(Menu.MenuEntry::menuId).toList();
        List<String> categories = categories(event.event());
        List<String> named =
                categories.stream().filter(ids::contains).distinct().toList();
        if (named.size() == 1) return named.get(0);
        String value = categories.isEmpty() ? "(no category)" : String.join(",", categories);
        return refuse(
                Part.MENU,
                value,
                "one category of " + String.join(", ", ids) + "; or a category listed as otherCategories in menu.json");
    }

    int chair() {
        String location = event.event().getLocation() == null
                        || event.event().getLocation().getValue() == null
                ? ""
                : event.event().getLocation().getValue();
        Matcher matcher = CHAIR.matcher(location);
        if (matcher.matches()) return Integer.parseInt(matcher.group(1));
        refuse(Part.CHAIR, location.isEmpty() ? "(no location)" : location, "a location such as \"Chair 3\"");
        return 0;
    }

    String client() {
        String client = lines.getOrDefault("client", "");
        if (client.length() <= LONGEST_CLIENT && client.codePoints().noneMatch(FileProblem::steers)) return client;
        return refuse(
                Part.CLIENT, "client: " + client, "initials or a number, at most " + LONGEST_CLIENT + " characters");
    }

    Optional<String> stylist() {
        return Optional.ofNullable(lines.get("stylist")).map(each -> each.toLowerCase(Locale.ROOT));
    }

    String length(Menu menu) {
        return factor(Part.LENGTH, "length", menu.lengthPermille());
    }

    String density(Menu menu) {
        return factor(Part.DENSITY, "density", menu.densityPermille());
    }

    private String factor(Part part, String key, Map<String, Integer> known) {
        String value = lines.getOrDefault(key, "").toLowerCase(Locale.ROOT);
        if (known.containsKey(value)) return value;
        return refuse(
                part,
                value.isEmpty() ? "(no line \"" + key + ": ...\")" : key + ": " + value,
                "a line \"" + key + ": ...\" with one of " + String.join(", ", known.keySet()));
    }

    int minutes(Part part, String key) {
        String value = lines.getOrDefault(key, "0");
        Matcher matcher = MINUTES.matcher(value);
        if (matcher.matches() && Integer.parseInt(matcher.group(1)) <= MOST_MINUTES) {
            return Integer.parseInt(matcher.group(1));
        }
        refuse(part, key + ": " + value, "whole minutes from 0 to " + MOST_MINUTES + ", such as \"" + key + ": 15\"");
        return 0;
    }

    /** When strand and patch test were done, by lines such as {@code patch test: 2027-05-12 09:30}. */
    Optional<ClientTests> tests(Instant start, ZoneId zone) {
        Optional<Instant> strand = test(Part.STRAND_TEST, "strand test", start, zone);
        Optional<Instant> patch = test(Part.PATCH_TEST, "patch test", start, zone);
        return strand.isEmpty() && patch.isEmpty() ? Optional.empty() : Optional.of(new ClientTests(strand, patch));
    }

    private Optional<Instant> test(Part part, String key, Instant start, ZoneId zone) {
        if (!lines.containsKey(key)) return Optional.empty();
        String value = lines.getOrDefault(key, "").replaceFirst("([0-9]) +([0-9])", "$1T$2");
        try {
            LocalTimes.Meaning meaning = LocalTimes.meaning(LocalDateTime.parse(value), zone.getRules());
            if (meaning instanceof LocalTimes.Meaning.One one && !one.instant().isAfter(start))
                return Optional.of(one.instant());
            if (meaning instanceof LocalTimes.Meaning.Unclear unclear)
                refuse(part, key + ": " + value, unclear.acceptedLocally());
            else refuse(part, key + ": " + value, "a time before the start of the service");
        } catch (DateTimeException noSuchTime) {
            refuse(part, key + ": " + value, "a local date and time, such as \"" + key + ": 2027-05-12 09:30\"");
        }
        return Optional.empty();
    }

    /** Whether the formula of the last visit is wanted, by the line {@code formula: as last time}. */
    Optional<Boolean> asLastTime() {
        if (!lines.containsKey("formula")) return Optional.empty();
        String value = lines.getOrDefault("formula", "").toLowerCase(Locale.ROOT);
        if (value.equals("as last time")) return Optional.of(true);
        if (value.equals("by the menu")) return Optional.of(false);
        refuse(Part.FORMULA, "formula: " + value, "\"formula: as last time\" or \"formula: by the menu\"");
        return Optional.empty();
    }

    private String refuse(Part part, String value, String accepted) {
        complete = false;
        event.refuse(part, value, accepted);
        return "";
    }
}
