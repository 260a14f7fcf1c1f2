package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.DayCommand;
import stirtide.events.command.DayCommand.RecordStrip;
import stirtide.events.command.DayCommand.RecordSwatch;
import stirtide.events.command.DayCommand.RepeatFormula;
import stirtide.events.day.Booking;
import stirtide.events.json.ContractJson;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.SwatchTest;
import stirtide.events.view.DayView;
import stirtide.events.view.SwatchView;
import stirtide.events.view.VisitsView;

/** What a played day mixed is there a week later, for clients who come again and after a restart. */
class RememberedDaysIT {
    private static final LocalDate LATER = LocalDate.parse("2027-03-16");
    private static final String LATER_DAY = "quay-house/" + LATER;

    @TempDir
    Path folder;

    private static DayCommand.OpenDay weekLater() {
        DaySetup setup = SmallSalon.setup();
        DaySetup later = new DaySetup(LATER, setup.salon(), setup.developers(), setup.directions(), setup.menu());
        Booking again = SmallSalon.booking("c-1", "full", 1, "09:00", "long");
        return new DayCommand.OpenDay(
                later,
                List.of(again.withStart(again.start().plus(Duration.ofDays(7))).withChair(1)));
    }

    private static HttpResponse<String> send(SalonClient client, String day, String id, DayCommand command)
            throws Exception {
        return client.send(client.command(day, SmallSalon.request(id, command)));
    }

    private static VisitsView visits(SalonClient client) throws Exception {
        return ContractJson.read(
                client.get("/days/" + LATER_DAY + "/services/1/visits").body(), VisitsView.class);
    }

    @Test
    void a_formula_is_planned_again_a_week_later_as_it_was_really_weighed() throws Exception {
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            assertThat(client.open(SmallSalon.opening()).statusCode()).isEqualTo(201);
            send(client, SmallSalon.DAY, "swatch-one", new RecordSwatch(swatch()));
            send(client, SmallSalon.DAY, "strip-one-", new RecordStrip(strip()));
            PlayedDayIT.play(client);
            assertThat(client.open(SmallSalon.request("open-day-2", weekLater()))
                            .statusCode())
                    .isEqualTo(201);
            VisitsView before = visits(client);
            assertThat(before.visits()).hasSize(1);
            assertThat(before.visits().get(0).zones()).extracting("zone").containsExactly("front foils", "back foils");
            assertThat(before.lastTime()).extracting("answer").containsOnly("EXACT");
            assertThat(send(client, LATER_DAY, "as-last-time", new RepeatFormula(1, true))
                            .statusCode())
                    .isEqualTo(200);
            client.advance(SmallSalon.MORNING.plus(Duration.ofHours(12)));
            DayView view = client.view(LATER_DAY);
            int ratio = before.visits().get(0).zones().get(0).ratioThousandths();
            assertThat(view.services().get(0).memory().orElseThrow().asLastTime())
                    .isTrue();
            assertThat(view.queue())
                    .isNotEmpty()
                    .allSatisfy(queued -> assertThat(queued.bowl().formula().wantedRatioThousandths())
                            .isEqualTo(ratio));
        }
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            assertThat(visits(client).asLastTime()).isTrue();
            SwatchView swatches = ContractJson.read(
                    client.get("/days/" + LATER_DAY + "/swatches").body(), SwatchView.class);
            assertThat(swatches.lighteners()).singleElement().satisfies(card -> {
                assertThat(card.lifts()).hasSize(1);
                assertThat(card.strips()).hasSize(1);
            });
            assertThat(client.get("/days/" + LATER_DAY + "/services/9/visits").statusCode())
                    .isEqualTo(409);
        }
    }

    private static SwatchTest swatch() {
        return new SwatchTest(LocalDate.parse("2027-03-09"), "powder", 2000, 600, 30, 50, 75);
    }

    private static MixStrip strip() {
        return new MixStrip(LocalDate.parse("2027-03-09"), "powder", 2000, 600, 100, 5);
    }
}
