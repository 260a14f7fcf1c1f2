package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.DayCommand;
import stirtide.events.json.ContractJson;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Salon;
import stirtide.events.setup.SetupPiece;
import stirtide.events.view.SetupView;

/** A salon set up from nothing through the service, piece by piece, up to a planned day; then a move is tried. */
class SetUpSalonIT {
    private static final String SETUP = "/days/" + SmallSalon.DAY + "/setup";

    @TempDir
    Path folder;

    private int commands;

    private HttpResponse<String> change(SalonClient client, SetupPiece piece) throws Exception {
        commands++;
        return client.send(client.command(
                SmallSalon.DAY, SmallSalon.request("set-up-" + commands, new DayCommand.ChangeSetup(piece))));
    }

    private static DaySetup bare(DaySetup full) {
        Salon s = full.salon();
        Salon salon = new Salon(
                s.salonId(),
                s.name(),
                s.zone(),
                s.currency(),
                3,
                1,
                5,
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
        Menu menu =
                new Menu(List.of(), full.menu().lengthPermille(), full.menu().densityPermille());
        return new DaySetup(full.date(), salon, List.of(), List.of(), menu);
    }

    private static List<SetupPiece> pieces(DaySetup full) {
        List<SetupPiece> pieces = new ArrayList<>();
        full.salon().people().forEach(one -> pieces.add(new SetupPiece.OnePerson(one)));
        full.salon().scales().forEach(one -> pieces.add(new SetupPiece.OneScale(one)));
        full.salon().bowls().forEach(one -> pieces.add(new SetupPiece.OneBowlSize(one)));
        full.developers().forEach(one -> pieces.add(new SetupPiece.OneDeveloper(one)));
        full.directions().forEach(one -> pieces.add(new SetupPiece.OneLightener(longer(one))));
        full.menu().entries().forEach(one -> pieces.add(new SetupPiece.OneMenuEntry(one)));
        return pieces;
    }

    /** The small salon's own entries would rinse too late for its powder; the files would refuse them, and so would this. */
    private static Directions longer(Directions d) {
        List<TechniqueRule> rules = List.of(new TechniqueRule("foil", false, 1500, 3000, 1200, 120));
        return new Directions(
                d.lightenerId(),
                d.name(),
                d.form(),
                d.workingLifeMinutes(),
                d.mixMinutes(),
                d.waterPermitted(),
                rules,
                d.packMilligrams(),
                d.packPrice(),
                d.countedMilligrams(),
                d.strandTestHours(),
                d.patchTestHours(),
                d.cautions());
    }

    @Test
    void an_empty_salon_becomes_a_planned_day_and_a_move_can_be_tried() throws Exception {
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            DaySetup full = SmallSalon.setup();
            assertThat(client.open(SmallSalon.request("open-bare-1", new DayCommand.OpenDay(bare(full), List.of())))
                            .statusCode())
                    .isEqualTo(201);
            client.advance(SmallSalon.MORNING);
            assertThat(setup(client).missing()).hasSize(6);
            for (SetupPiece piece : pieces(full))
                assertThat(change(client, piece).body()).contains("lastRevision");
            Developer odd = new Developer("Odd!", "Odd", 600, 1_000, BigDecimal.ONE, Optional.empty());
            HttpResponse<String> refused = change(client, new SetupPiece.OneDeveloper(odd));
            assertThat(refused.statusCode()).isEqualTo(409);
            assertThat(refused.body()).contains("SETUP_INVALID", "small letters, digits and hyphens");
            SetupView view = setup(client);
            assertThat(view.missing()).isEmpty();
            assertThat(view.setup().salon()).isEqualTo(full.salon());
            assertThat(view.files())
                    .containsOnlyKeys("developers.json", "directions/powder.json", "menu.json", "salon.json");
            client.send(client.command(
                    SmallSalon.DAY,
                    SmallSalon.request(
                            "book-one-1",
                            new DayCommand.BookService(SmallSalon.booking("b-1", "full", 1, "09:00", "long")))));
            client.advance(SmallSalon.MORNING);
            assertThat(client.view(SmallSalon.DAY).queue()).isNotEmpty();
            tryMove(client);
        }
    }

    private static void tryMove(SalonClient client) throws Exception {
        String path = "/days/" + SmallSalon.DAY + "/move?service=1&start=";
        MoveAdvice advice =
                ContractJson.read(client.get(path + "2027-03-09T09:20:00Z").body(), MoveAdvice.class);
        assertThat(advice.singles()).hasSize(1);
        assertThat(advice.singles().get(0).moves().get(0).to()).isEqualTo(Instant.parse("2027-03-09T09:20:00Z"));
        assertThat(advice.singles().get(0).sentence()).startsWith("Move service 1 from 09:00 to 09:20");
        assertThat(client.get(path + "2027-03-09T09:00:00Z").body()).contains("NOTHING_MOVES");
        assertThat(client.get(path + "soon").statusCode()).isEqualTo(400);
        assertThat(client.view(SmallSalon.DAY).services().get(0).bookedStart())
                .isEqualTo(Instant.parse("2027-03-09T09:00:00Z"));
    }

    private static SetupView setup(SalonClient client) throws Exception {
        return ContractJson.read(client.get(SETUP).body(), SetupView.class);
    }
}
