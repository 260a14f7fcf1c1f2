package stirtide.demo.print;

import java.util.List;
import stirtide.bar.text.CountText;

/** The sheet of one person who mixes: a row to tick for each bowl, with room for what really was. */
final class HtmlMixes {
    private HtmlMixes() {}

    static void write(HtmlWriter html, PrepSheetDay day, String person, List<MixRow> rows) {
        html.open("section", "class", "person").element("h1", person);
        html.element(
                        "p",
                        PrepSheet.title(day) + ": " + CountText.of(rows.size(), "bowl")
                                + ". Read the cautions on the first page and the maker's leaflet first. Gloves on, eyes"
                                + " protected, bowls without metal. A bowl past its life is thrown away, never thinned"
                                + " or freshened up.",
                        "class",
                        "summary")
                .text("\n");
        if (rows.isEmpty()) html.element("p", "Nothing to mix.");
        else table(html, rows);
        html.closeLine();
    }

    private static void table(HtmlWriter html, List<MixRow> rows) {
        html.open("table", "class", "mixes").open("thead").open("tr");
        for (String name : List.of("", "start", "bowl", "weigh", "at the chair", "left over")) html.element("th", name);
        html.close().closeLine().open("tbody").text("\n");
        rows.forEach(row -> bowl(html, row));
        html.close().closeLine();
    }

    private static void bowl(HtmlWriter html, MixRow row) {
        html.open("tr", "class", "bowl");
        html.open("td").open("span", "class", "tick").close().close();
        html.open("td").element("b", row.start(), "class", "start");
        blank(html, "real").close();
        html.open("td").element("b", row.bowl(), "class", "id").text(" chair " + row.chair() + ", " + row.client());
        html.element("div", row.zones()).element("div", row.vessel());
        row.remarks().forEach(text -> html.element("div", "! " + text, "class", "mark"));
        html.close().open("td");
        weights(html, row);
        html.close().open("td").element("div", row.use());
        html.open("div").text("life ends ").element("b", row.ends()).close();
        row.waiting().ifPresent(text -> html.element("div", text));
        html.close().open("td");
        blank(html, "g").close();
        html.closeLine();
    }

    private static void weights(HtmlWriter html, MixRow row) {
        row.together().ifPresent(text -> html.element("div", text, "class", "mark"));
        html.open("table", "class", "weights");
        for (MixRow.Weight weight : row.weights()) {
            html.open("tr").element("td", weight.grams(), "class", "grams").element("td", weight.what());
            html.open("td", "class", "real");
            blank(html, "g").close().close();
        }
        html.close();
        row.sum().ifPresent(text -> html.element("div", "= " + text, "class", "sum"));
        row.strength().ifPresent(text -> html.element("div", text, "class", "strength"));
        row.divide().ifPresent(text -> html.element("div", text, "class", "mark"));
    }

    /** Room to write in, with the unit or the word that belongs to it. */
    private static HtmlWriter blank(HtmlWriter html, String unit) {
        return html.open("span", "class", "room")
                .open("span", "class", "line")
                .close()
                .text(" " + unit)
                .close();
    }
}
