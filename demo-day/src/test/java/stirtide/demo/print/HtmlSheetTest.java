package stirtide.demo.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import stirtide.demo.folder.FolderPlanner;
import stirtide.events.day.Booking;
import stirtide.events.plan.PlannedBowl;
import stirtide.mixing.text.AmountText;
import stirtide.planner.salonfiles.FolderResult;

class HtmlSheetTest {
    private static FolderResult.Read salon;
    private static PrepSheetDay day;
    private static String text;
    private static Document page;

    @BeforeAll
    static void write_the_demo_day() throws Exception {
        salon = FolderPlanner.read(Path.of("salon"), Optional.empty());
        day = FolderPlanner.plan(salon);
        text = PrepSheet.of(day, salon.notes());
        page = parsed(HtmlSheet.of(day, salon.notes()));
    }

    private static Document parsed(String html) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(html)));
    }

    private static List<Element> all(Object in, String path) throws Exception {
        NodeList found = (NodeList) XPathFactory.newInstance().newXPath().evaluate(path, in, XPathConstants.NODESET);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) elements.add((Element) found.item(i));
        return elements;
    }

    private static List<String> texts(Object in, String path) throws Exception {
        return all(in, path).stream().map(Element::getTextContent).toList();
    }

    private static List<String> bowls() {
        return day.plan().bowls().stream().map(PlannedBowl::bowl).sorted().toList();
    }

    @Test
    void every_bowl_stands_once_on_the_sheet_of_who_mixes_it_and_once_in_the_picture() throws Exception {
        assertThat(texts(page, "//tr[@class='bowl']//b[@class='id']")).hasSize(24);
        assertThat(texts(page, "//tr[@class='bowl']//b[@class='id']").stream().sorted())
                .containsExactlyElementsOf(bowls());
        assertThat(texts(page, "//*[@class='life']/text").stream().sorted()).containsExactlyElementsOf(bowls());
        for (Element person : all(page, "//section[@class='person']")) {
            String name = texts(person, "h1").get(0);
            List<String> own = day.plan().bowls().stream()
                    .filter(bowl -> bowl.personId().map(day::personName).equals(Optional.of(name)))
                    .map(PlannedBowl::bowl)
                    .toList();
            assertThat(texts(person, ".//b[@class='id']")).isNotEmpty().containsExactlyInAnyOrderElementsOf(own);
        }
    }

    /** The weights of the text sheet, line by line, are those of the page, and so are the minutes. */
    @Test
    void grams_and_minutes_are_those_of_the_text_sheet() throws Exception {
        List<String> weights = all(page, "//table[@class='weights']/tr").stream()
                .map(row -> {
                    NodeList cells = row.getElementsByTagName("td");
                    return cells.item(0).getTextContent() + " " + cells.item(1).getTextContent();
                })
                .toList();
        List<String> printed = text.lines()
                .filter(line -> line.matches("(       |     \\+ )[0-9.]+ g .*"))
                .map(line -> line.substring(7))
                .toList();
        assertThat(printed).hasSizeGreaterThan(48);
        assertThat(weights).containsExactlyElementsOf(printed);
        for (String sum : texts(page, "//*[@class='sum']")) assertThat(text).contains("     " + sum.substring(0, 7));
        for (PlannedBowl bowl : day.plan().bowls()) {
            Element row = all(page, "//tr[@class='bowl'][.//b[@class='id']='" + bowl.bowl() + "']")
                    .get(0);
            assertThat(row.getTextContent())
                    .contains(day.clock(bowl.mixStart()), day.clock(bowl.lifeEnds()), day.client(bowl.service()))
                    .contains(day.clock(bowl.neededFrom()) + "-" + day.clock(bowl.neededTo()));
        }
        for (var service : day.plan().services())
            for (var zone : service.zones())
                assertThat(texts(page, "//section[@class='clients']//tr"))
                        .anySatisfy(row -> assertThat(row)
                                .contains(zone.zone())
                                .contains(day.clock(zone.applyStart()) + "-" + day.clock(zone.applyEnd()))
                                .contains(day.clock(zone.rinseAt())));
    }

    @Test
    void every_bowl_has_a_box_to_tick_and_room_for_each_weight_the_start_and_the_leftover() throws Exception {
        for (Element row : all(page, "//tr[@class='bowl']")) {
            int weights = all(row, ".//table[@class='weights']/tr").size();
            assertThat(all(row, ".//span[@class='tick']")).hasSize(1);
            assertThat(all(row, ".//span[@class='room']")).hasSize(weights + 2);
        }
    }

    @Test
    void cautions_stand_first_on_paper_and_as_text() throws Exception {
        assertThat(texts(page, "//h2").get(0)).isEqualTo("Cautions");
        for (String caution : CautionSection.USUAL)
            assertThat(texts(page, "//div[@class='cautions']").get(0)).contains(caution);
        assertThat(text.indexOf("\nCAUTIONS\n")).isBetween(0, text.indexOf("MIX, IN THIS ORDER"));
        assertThat(text.lines().filter(line -> line.startsWith("MIX, IN THIS ORDER: ")))
                .containsExactly("MIX, IN THIS ORDER: Tamsin", "MIX, IN THIS ORDER: Jorin");
    }

    @Test
    void the_page_asks_for_nothing_from_elsewhere_and_runs_nothing() throws Exception {
        String html = HtmlSheet.of(day, salon.notes());
        assertThat(html)
                .startsWith("<!DOCTYPE html>")
                .doesNotContainIgnoringCase("http:", "https:", "@import", "<script");
        assertThat(html.replace("url(#stripes)", "")).doesNotContain("url(");
        assertThat(all(page, "//@src/.. | //@href/.. | //script | //link | //img | //iframe"))
                .isEmpty();
        assertThat(html).contains("@media print", "@page").doesNotContainPattern("<(td|span|div|p|b)[^<>]*/>");
    }

    @Test
    void names_cannot_break_out_of_the_page() throws Exception {
        String hostile = "</td><script>alert('x')</script>&amp;\"\u0001\uD800<!--";
        String shown = "</td><script>alert('x')</script>&amp;\"\uFFFD\uFFFD<!--";
        SortedMap<Integer, Booking> bookings = new TreeMap<>(day.bookings());
        bookings.replaceAll((service, booking) -> booking.withClientRef(hostile));
        var setup = day.setup().withSalon(day.setup().salon().withName(hostile));
        Document document =
                parsed(HtmlSheet.of(new PrepSheetDay(setup, bookings, day.plan(), day.cards()), List.of(hostile)));
        assertThat(all(document, "//script")).isEmpty();
        assertThat(texts(document, "//tr[@class='bowl']"))
                .hasSize(24)
                .allSatisfy(row -> assertThat(row).contains(shown));
        assertThat(texts(document, "//title").get(0)).contains(shown);
    }

    @Test
    void what_a_stylist_mixes_stands_on_a_sheet_of_its_own() throws Exception {
        List<PlannedBowl> bowls = day.plan().bowls().stream()
                .map(bowl -> bowl.bowl().equals("1a") ? bowl.withPersonId(Optional.empty()) : bowl)
                .collect(Collectors.toList());
        PrepSheetDay changed =
                new PrepSheetDay(day.setup(), day.bookings(), day.plan().withBowls(bowls), day.cards());
        Document document = parsed(HtmlSheet.of(changed, List.of()));
        assertThat(texts(document, "//section[@class='person']/h1")).containsExactly("Tamsin", "Jorin", "The stylist");
        assertThat(texts(document, "//section[@class='person'][3]//b[@class='id']"))
                .containsExactly("1a");
        assertThat(PrepSheet.of(changed, List.of())).contains("MIX, IN THIS ORDER: The stylist");
    }

    /** Bowl 1a: 28.6 g and 57.1 g of 6 %: 57.1 / 28.6 = 1.9965, 6 % * 57.1 / 85.7 = 3.998 %. */
    @Test
    void ratio_and_strength_are_those_of_the_weights_with_what_the_scale_may_err() throws Exception {
        Element row = all(page, "//tr[@class='bowl'][.//b[@class='id']='1a']").get(0);
        var formula = day.plan().bowls().get(0).formula();
        assertThat(formula.lightenerMilligrams()).isEqualTo(28_600);
        assertThat(formula.developerMilligrams()).isEqualTo(57_100);
        String errs = AmountText.ratio(formula.worstLowRatioThousandths()) + " to "
                + AmountText.ratio(formula.worstHighRatioThousandths());
        assertThat(texts(row, ".//*[@class='sum']"))
                .containsExactly("= 85.7 g at 1:1.997, directions 1:1.5 to 1:2.5; weigh to 0.1 g");
        assertThat(texts(row, ".//*[@class='strength']"))
                .containsExactly("developer 20 vol (6 %), bowl 4 %; scale errs: " + errs);
        assertThat(text)
                .contains("     = 85.7 g at 1:1.997, directions 1:1.5 to 1:2.5; weigh to 0.1 g\n"
                        + "       developer 20 vol (6 %), bowl 4 %; scale errs: " + errs + "\n");
    }

    /** Service 4 is a retouch of two zones that are rinsed together; its zones alone would permit 10:00 and 10:12. */
    @Test
    void latest_rinse_counts_from_the_first_touch_of_the_section_and_exposure_from_first_and_last() throws Exception {
        var zones = day.plan().services().get(3).zones();
        assertThat(zones.get(0).rinseBy()).isBefore(zones.get(1).rinseBy());
        String latest = day.clock(zones.get(0).rinseBy());
        for (var zone : zones) {
            long last = Duration.between(zone.applyEnd(), zone.rinseAt()).toMinutes();
            long first = Duration.between(zone.applyStart(), zone.rinseAt()).toMinutes();
            assertThat(text.lines())
                    .anySatisfy(line -> assertThat(line)
                            .startsWith("    " + zone.zone() + " ")
                            .contains(day.clock(zone.applyStart()) + "-", "  " + latest)
                            .endsWith(" " + last + "-" + first));
            assertThat(texts(page, "//section[@class='clients']//tr"))
                    .anySatisfy(row -> assertThat(row).contains(zone.zone()).endsWith(latest + last + "-" + first));
        }
    }

    /** Counted minute by minute from the plan: from the start of the mix until it is washed after its last use. */
    @Test
    void bowls_at_once_are_those_of_the_fullest_minute() {
        for (BowlsAtOnce.Peak peak : BowlsAtOnce.peaks(day)) {
            long most = 0;
            for (PlannedBowl each : day.plan().bowls()) {
                var at = each.mixStart();
                most = Math.max(
                        most,
                        day.plan().bowls().stream()
                                .filter(bowl -> bowl.bowlSizeId().equals(peak.sizeId()))
                                .filter(bowl -> !bowl.mixStart().isAfter(at)
                                        && bowl.neededTo().plusSeconds(5 * 60).isAfter(at))
                                .count());
            }
            assertThat((long) peak.most()).isEqualTo(most).isBetween(1L, (long) peak.owned());
        }
        assertThat(text).contains("BOWLS AT ONCE");
    }
}
