package stirtide.demo.print;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;

/**
 * The prep sheet of a day as one HTML page for a printer, on A4 and letter, without color, scripts and anything from
 * elsewhere. It says what {@link PrepSheet} says: cautions and the day, a sheet for each person who mixes, a picture of the
 * day, the clients.
 */
public final class HtmlSheet {
    private HtmlSheet() {}

    /**
     * Writes the page, which is well-formed XML too.
     *
     * @param leftOut sentences about bookings that are not of this day's bar
     */
    public static String of(PrepSheetDay day, List<String> leftOut) {
        HtmlWriter html = new HtmlWriter();
        html.open("html", "lang", "en").text("\n").open("head");
        html.empty("meta", "charset", "utf-8");
        html.empty(
                "meta",
                "http-equiv",
                "Content-Security-Policy",
                "content",
                "default-src 'none'; style-src 'unsafe-inline'");
        html.empty("meta", "name", "viewport", "content", "width=device-width");
        html.element("title", "Prep sheet, " + PrepSheet.title(day));
        html.element("style", style()).closeLine().open("body").text("\n");
        first(html, day, leftOut);
        MixRows.byPerson(day).forEach((person, rows) -> HtmlMixes.write(html, day, person, rows));
        DayPicture.write(html, day);
        clients(html, day);
        return html.closeLine().closeLine().page();
    }

    private static void first(HtmlWriter html, PrepSheetDay day, List<String> leftOut) {
        html.open("section").element("h1", "Prep sheet, " + PrepSheet.title(day));
        html.element("p", PrepSheet.summary(day), "class", "summary").text("\n");
        HtmlSections sections = new HtmlSections(html);
        html.open("div", "class", "cautions");
        CautionSection.write(sections, day);
        sections.end();
        html.closeLine();
        PrepSheet.theDay(sections, day, leftOut);
        sections.end();
        html.closeLine();
    }

    private static void clients(HtmlWriter html, PrepSheetDay day) {
        html.open("section", "class", "clients");
        HtmlSections sections = new HtmlSections(html);
        ClientSection.write(sections, day);
        sections.end();
        html.closeLine();
    }

    private static String style() {
        try (InputStream css = Objects.requireNonNull(HtmlSheet.class.getResourceAsStream("sheet.css"))) {
            return new String(css.readAllBytes(), UTF_8);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
