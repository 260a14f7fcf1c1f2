package stirtide.bar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import stirtide.bar.Samples;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;

class DayPageTest {
    @Test
    void the_page_needs_nothing_beside_itself() {
        String page = DayPage.of(Samples.busy(), Samples.past());
        String links = page.replace("xmlns=\"http://www.w3.org/2000/svg\"", "");
        assertThat(links).doesNotContain("http:", "https:", "<script", "<img", "<link", "@import", "url(");
    }

    @Test
    void the_chart_is_well_formed_and_has_a_bar_a_day() throws IOException, SAXException, ParserConfigurationException {
        String page = DayPage.of(Samples.busy(), Samples.past());
        String svg = page.substring(page.indexOf("<svg"), page.indexOf("</svg>") + 6);
        Document chart =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        assertThat(chart.getElementsByTagName("rect").getLength())
                .isEqualTo(Samples.past().size() + 1);
        assertThat(svg).contains(">151 !<", ">upper ");
    }

    @Test
    void weeks_are_summed_with_their_money_in_the_page_and_as_json(@TempDir Path folder) throws IOException {
        String page = DayPage.of(Samples.busy(), Samples.past());
        // Monday 3 to Sunday 9 May: 72 + 64 + 69 + 57 + 151 + 66 + 73 g, each day 2.60
        assertThat(page)
                .contains("from 2027-05-03, 7 known days")
                .contains("552.0 g, 8.8 % of mixed, 18.20 GBP")
                .contains("Over-mixed by cause over 28 days, 21 known");
        new DayFiles(folder).write(Samples.busy(), Samples.past());
        var weeks =
                ContractJson.mapper().readTree(Files.readString(folder.resolve("larch-lane-2027-05-14-weeks.json")));
        assertThat(weeks.get("days")).hasSize(21);
        assertThat(weeks.at("/days/13/byCause/past life").asInt()
                        + weeks.at("/days/13/byCause/left over").asInt())
                .isEqualTo(151_000);
        assertThat(weeks.at("/limits/upperMilligrams").decimalValue()).isPositive();
    }

    @Test
    void a_name_cannot_break_the_page() {
        assertThat(Markup.escape("<b>\"&")).isEqualTo("&lt;b&gt;&quot;&amp;");
    }

    @Test
    void both_files_are_written_and_the_json_is_the_day(@TempDir Path folder) throws IOException {
        String told = new DayFiles(folder).write(Samples.busy(), List.of());
        assertThat(told).startsWith("written: ");
        String json = Files.readString(folder.resolve("larch-lane-2027-05-14.json"));
        assertThat(ContractJson.read(json, DayView.class)).isEqualTo(Samples.busy());
        assertThat(folder.resolve("larch-lane-2027-05-14.html")).exists();
    }

    @Test
    void a_folder_that_takes_no_files_is_told(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "");
        assertThat(new DayFiles(file).write(Samples.busy(), List.of())).startsWith("not written: ");
    }
}
