package stirtide.planner.views;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.command.DayCommand.PinAllowance;
import stirtide.events.command.DayCommand.RecordStrip;
import stirtide.events.command.DayCommand.RecordSwatch;
import stirtide.events.command.DayCommand.RepeatFormula;
import stirtide.events.day.ClientTests;
import stirtide.events.json.ContractJson;
import stirtide.events.setup.AllowancePolicy;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.PastVisit.PastZone;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.events.setup.SalonMemory;
import stirtide.events.setup.SwatchTest;
import stirtide.events.setup.UseHistory;
import stirtide.events.view.DayView;
import stirtide.events.view.VisitsView;
import stirtide.planner.day.BatchScene;
import stirtide.planner.day.Given;
import stirtide.planner.day.Scene;

/** Views with something in every part fit the contract and read back as they were written. */
class ViewsFitContractTest {
    private static PastVisit visit(int daysBefore, int ratio) {
        var crown = new PastZone(
                "crown",
                "foil",
                "cloudlift",
                600,
                ratio,
                66_000,
                61_000,
                22,
                20,
                Optional.of(31),
                Optional.of(60),
                Optional.empty());
        return new PastVisit(Given.DATE.minusDays(daysBefore), "Q.Z.", "foils", List.of(crown));
    }

    private static DaySetup setup() {
        var plain = Given.setup();
        var salon = plain.salon();
        var people = new java.util.ArrayList<>(salon.people());
        people.add(new Person("ruta", "Ruta", Person.Role.MANAGER, List.of()));
        var managed = new Salon(
                salon.salonId(),
                salon.name(),
                salon.zone(),
                salon.currency(),
                salon.chairs(),
                salon.handOverMinutes(),
                salon.washMinutes(),
                people,
                salon.scales(),
                salon.bowls(),
                Optional.empty(),
                Optional.empty());
        var memory =
                new SalonMemory(List.of(visit(90, 2_800), visit(40, 2_800)), List.of(), List.of(), Optional.of(900));
        return new DaySetup(plain.date(), managed, plain.developers(), plain.directions(), plain.menu())
                .with(new UseHistory(List.of(), List.of(), Optional.of(memory)))
                .withAllowances(Optional.of(
                        new AllowancePolicy(Optional.empty(), Optional.of(new BigDecimal("0.80")), 10_000, 200)));
    }

    private static Scene scene() {
        return new Scene()
                .as("ruta")
                .does(new OpenDay(
                        setup(),
                        List.of(
                                Given.booking("one", "foils", 1, "10:00").withTests(Optional.of(ClientTests.NONE)),
                                Given.booking("two", "full", 2, "10:30").withAsLastTime(Optional.of(true)))))
                .plans(Given.planned("1a", 1, "09:54", "10:00"))
                .does(new RepeatFormula(1, true))
                .does(new PinAllowance("full", "crown", 44_000))
                .does(new RecordSwatch(new SwatchTest(Given.DATE, "cloudlift", 2000, 900, 30, 50, 75)))
                .does(new RecordStrip(new MixStrip(Given.DATE, "cloudlift", 2000, 900, 100, 5)))
                .does(new RecordStrip(new MixStrip(Given.DATE, "cloudlift", 1500, 900, 105, 5)));
    }

    @Test
    void every_view_fits_its_schema_and_reads_back() throws IOException {
        var day = scene().day;
        var visits = VisitsViews.of(day, day.service(1).orElseThrow(), Optional.empty(), Optional.of(LocalDate.EPOCH));
        fits("GramsView", GramsViews.of(day));
        fits("SwatchView", SwatchViews.of(day));
        fits("VisitsView", visits);
        fits("DayView", DayViews.of(day, Given.at("09:00"), 1000));
        assertThat(ContractJson.read(ContractJson.write(visits), VisitsView.class))
                .isEqualTo(visits);
        assertThat(visits.sideBySide()).isPresent();
        assertThat(visits.lastTime()).extracting("answer").containsExactly("NEAREST", "NEW");
    }

    @Test
    void a_day_with_one_mix_for_two_bowls_fits_its_schema_and_reads_back() throws IOException {
        for (Scene scene :
                List.of(BatchScene.planned(), BatchScene.begun(), BatchScene.weighed(), BatchScene.divided())) {
            var view = DayViews.of(scene.day, scene.now, 1000);
            fits("DayView", view);
            assertThat(ContractJson.read(ContractJson.write(view), DayView.class))
                    .isEqualTo(view);
        }
    }

    @Test
    void two_bowls_of_one_mix_stand_together_in_the_queue_with_the_start_of_that_mix() {
        var queue =
                DayViews.of(BatchScene.planned().day, Given.at("09:00"), 1000).queue();
        assertThat(queue).extracting(row -> row.bowl().bowl()).containsExactly("1a", "2a");
        assertThat(queue).extracting(row -> row.bowl().mixStart()).containsOnly(Given.at("09:53"));
        var batch = queue.get(1).batch().orElseThrow();
        assertThat(batch.mixedIn().chair()).isEqualTo(1);
        assertThat(batch.pouredInto().milligrams()).isEqualTo(54_000);
        assertThat(batch.planned().lightenerMilligrams()).isEqualTo(40_000);
        // the weights of the bowl alone stay known: it may be mixed alone
        assertThat(queue.get(0).bowl().formula()).isEqualTo(Given.formula());
    }

    @Test
    void what_to_pour_next_is_told_for_the_whole_mix_whichever_of_its_bowls_is_asked_for() {
        var day = BatchScene.begun().day;
        for (String bowl : List.of("1a", "2a")) {
            var advice = PourAdvices.of(day, day.bowl(bowl).orElseThrow(), "lightener:40000");
            assertThat(advice.bowl()).isEqualTo("1a");
            assertThat(advice.milligrams()).isEqualTo(80_000);
        }
    }

    @Test
    void a_salon_that_is_only_being_set_up_has_empty_views() throws IOException {
        var plain = Given.setup();
        var menu = new stirtide.events.setup.Menu(
                List.of(), plain.menu().lengthPermille(), plain.menu().densityPermille());
        var bare = new DaySetup(plain.date(), plain.salon(), List.of(), plain.directions(), menu);
        var day = new Scene().does(new OpenDay(bare, List.of())).day;
        assertThat(GramsViews.of(day).mixes()).isEmpty();
        fits("GramsView", GramsViews.of(day));
        fits("SwatchView", SwatchViews.of(day));
    }

    @Test
    void what_changed_about_the_last_formula_is_among_the_notes() {
        var notes = DayViews.of(scene().day, Given.at("09:00"), 1000).notes();
        assertThat(notes).extracting("kind").containsExactly("TEST_MISSING", "LAST_TIME_CHANGED", "LAST_TIME_UNKNOWN");
        assertThat(notes.get(1).sentence()).startsWith("As last time, crown: the directions now permit 1:1.5 to 1:2.5");
    }

    @Test
    void the_fraction_a_manager_once_set_is_carried_along_and_named() {
        var view = GramsViews.of(scene().day);
        assertThat(view.fixedPermille()).contains(900);
        assertThat(view.fixedBy()).isEqualTo("MANAGER");
        assertThat(view.allowances()).extracting("source").contains("LAST_TIME", "PINNED", "MENU");
    }

    private static void fits(String schema, Object view) throws IOException {
        JsonNode document = contract();
        ((ObjectNode) document).put("$ref", "#/components/schemas/" + schema);
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(document)
                        .validate(new ObjectMapper().readTree(ContractJson.write(view))))
                .as(schema)
                .isEmpty();
    }

    private static JsonNode contract() throws IOException {
        try (InputStream yaml =
                Objects.requireNonNull(ViewsFitContractTest.class.getResourceAsStream("/openapi.yaml"))) {
            Map<String, Object> document = new Yaml(new SafeConstructor(new LoaderOptions())).load(yaml);
            return new ObjectMapper().valueToTree(document);
        }
    }
}
