package stirtide.demo.print;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A picture of the day: a lane for each person who mixes, in it a bar for each bowl from the start of its mix to the end of
 * its life, over an axis of time. Lengths are in millimeters on paper.
 */
final class DayPicture {
    private static final double WIDTH = 250;
    private static final double NAMES = 26;
    private static final double BAR = 4.4;
    private static final double ROW = 6;
    private static final double AXIS = 9;
    private static final int HALF_HOUR = 30;
    private static final int TICK = 5;

    private final HtmlWriter html;
    private final PrepSheetDay day;
    private final Instant from;
    private final double perMinute;
    private final int minutes;

    private DayPicture(HtmlWriter html, PrepSheetDay day, List<MixRow> rows) {
        this.html = html;
        this.day = day;
        Instant first =
                rows.stream().map(MixRow::begin).min(Comparator.naturalOrder()).orElseThrow();
        Instant last = rows.stream()
                .map(MixRow::lifeEnds)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        from = first.atZone(day.zone()).truncatedTo(ChronoUnit.HOURS).toInstant();
        int span = (int) Duration.between(from, last).toMinutes();
        minutes = (span / HALF_HOUR + 1) * HALF_HOUR;
        perMinute = (WIDTH - NAMES) / minutes;
    }

    /** Writes the picture on a page of its own; nothing for a day without bowls. */
    static void write(HtmlWriter html, PrepSheetDay day) {
        List<MixRow> rows = MixRows.of(day);
        if (rows.isEmpty()) return;
        html.open("section", "class", "picture").element("h1", "The day, " + PrepSheet.title(day));
        html.element(
                        "p",
                        "A bar is a bowl, from the start of its mix to the end of its life. Black: mixing. Striped: in use"
                                + " at the chair. White: may still be used.",
                        "class",
                        "summary")
                .text("\n");
        new DayPicture(html, day, rows).draw();
        html.closeLine();
    }

    private void draw() {
        Map<String, List<MixRow>> people = MixRows.byPerson(day);
        double height =
                AXIS + people.values().stream().mapToDouble(DayPicture::height).sum();
        html.open(
                "svg",
                "viewBox",
                "0 0 " + mm(WIDTH) + " " + mm(height),
                "role",
                "img",
                "aria-label",
                "the day's bowls");
        html.open("defs")
                .open(
                        "pattern",
                        "id",
                        "stripes",
                        "width",
                        "1.2",
                        "height",
                        "1.2",
                        "patternUnits",
                        "userSpaceOnUse",
                        "patternTransform",
                        "rotate(45)");
        rect(0, 0, 1.2, 1.2, "#fff").empty("rect", "width", "0.6", "height", "1.2", "fill", "#555");
        html.close().closeLine();
        axis(height);
        double top = AXIS;
        for (Map.Entry<String, List<MixRow>> person : people.entrySet()) {
            lane(person.getKey(), person.getValue(), top);
            top += height(person.getValue());
        }
        html.closeLine();
    }

    private void axis(double height) {
        for (int minute = 0; minute <= minutes; minute += TICK) {
            boolean named = minute % HALF_HOUR == 0;
            double x = NAMES + minute * perMinute;
            html.empty(
                    "line",
                    "x1",
                    mm(x),
                    "x2",
                    mm(x),
                    "y1",
                    mm(AXIS - (named ? 2 : 1)),
                    "y2",
                    mm(named ? height : AXIS),
                    "stroke",
                    named ? "#bbb" : "#777",
                    "stroke-width",
                    "0.2");
            if (named && minute < minutes)
                label(x, AXIS - 3.5, 3, day.clock(from.plus(Duration.ofMinutes(minute))), "middle");
        }
        html.text("\n");
    }

    private void lane(String person, List<MixRow> rows, double top) {
        html.empty(
                "line",
                "x1",
                "0",
                "x2",
                mm(WIDTH),
                "y1",
                mm(top),
                "y2",
                mm(top),
                "stroke",
                "#000",
                "stroke-width",
                "0.3");
        String name = person.codePointCount(0, person.length()) > 14
                ? person.substring(0, person.offsetByCodePoints(0, 13)) + "…"
                : person;
        label(0, top + ROW, 3.4, name, "start");
        List<Instant> free = new ArrayList<>();
        for (MixRow row : rows) {
            int line = lineFor(free, row);
            bowl(row, top + 1 + line * ROW);
        }
        html.text("\n");
    }

    private void bowl(MixRow row, double top) {
        html.open("g", "class", "life");
        html.element(
                "title",
                row.bowl() + ", " + row.client() + ": mix " + row.start() + ", use " + row.use() + ", life ends "
                        + row.ends());
        bar(row.begin(), row.lifeEnds(), top, "#fff");
        bar(row.neededFrom(), row.neededTo(), top, "url(#stripes)");
        bar(row.begin(), row.mixEnd(), top, "#000");
        double x = x(row.mixEnd()) + 0.8;
        rect(x - 0.4, top + 0.5, 1.9 * row.bowl().length() + 0.9, BAR - 1, "#fff");
        label(x, top + BAR - 1.1, 3.1, row.bowl(), "start");
        html.close();
    }

    private void bar(Instant start, Instant end, double top, String fill) {
        html.empty(
                "rect",
                "x",
                mm(x(start)),
                "y",
                mm(top),
                "width",
                mm(Math.max(0, x(end) - x(start))),
                "height",
                mm(BAR),
                "fill",
                fill,
                "stroke",
                "#000",
                "stroke-width",
                "0.25");
    }

    private HtmlWriter rect(double x, double y, double width, double height, String fill) {
        return html.empty("rect", "x", mm(x), "y", mm(y), "width", mm(width), "height", mm(height), "fill", fill);
    }

    private void label(double x, double y, double size, String text, String anchor) {
        html.element("text", text, "x", mm(x), "y", mm(y), "font-size", mm(size), "text-anchor", anchor);
    }

    private double x(Instant at) {
        return NAMES + Duration.between(from, at).toSeconds() / 60.0 * perMinute;
    }

    /** Height of a lane: bowls whose lives overlap are drawn below one another. */
    private static double height(List<MixRow> rows) {
        List<Instant> free = new ArrayList<>();
        rows.forEach(row -> lineFor(free, row));
        return Math.max(1, free.size()) * ROW + 2;
    }

    /** First line of a lane that is free when the bowl begins; it is taken until the bowl's life ends. */
    private static int lineFor(List<Instant> free, MixRow row) {
        for (int line = 0; line < free.size(); line++)
            if (!free.get(line).isAfter(row.begin())) {
                free.set(line, row.lifeEnds());
                return line;
            }
        free.add(row.lifeEnds());
        return free.size() - 1;
    }

    private static String mm(double length) {
        return String.format(Locale.ROOT, "%.2f", length);
    }
}
