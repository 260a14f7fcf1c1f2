package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.json.ContractJson;

/** Days that are over do not stay in memory whole, and nobody can tell. */
class ClosedDaySummariesIT {
    private static final LocalDate PLAYED = LocalDate.parse("2027-03-09");
    private static final int LATER_DAYS = 7;

    @TempDir
    Path folder;

    record Reference(String clientRef) {}

    private static String day(int later) {
        return "quay-house/" + PLAYED.plusDays(later);
    }

    private static CommandRequest opening(int later) {
        return ContractJson.read(
                ContractJson.write(SmallSalon.opening())
                        .replace(PLAYED.toString(), PLAYED.plusDays(later).toString()),
                CommandRequest.class);
    }

    private static HttpResponse<String> close(SalonClient client, int later) throws Exception {
        return client.send(
                client.command(day(later), SmallSalon.request("close-day-" + later, new DayCommand.CloseDay())));
    }

    private static List<String> views(SalonClient client) throws Exception {
        List<String> views = new ArrayList<>();
        for (int later = 0; later <= LATER_DAYS; later++)
            views.add(client.get("/days/" + day(later)).body());
        return views;
    }

    /** A played day, from which the later ones learn, and closed days after it. */
    private static List<String> playOneAndCloseMany(SalonClient client) throws Exception {
        List<String> shown = new ArrayList<>();
        PlayedDayIT.play(client);
        shown.add(client.get("/days/" + day(0)).body());
        shown.addAll(closeMany(client, 1));
        return shown;
    }

    private static List<String> closeMany(SalonClient client, int first) throws Exception {
        List<String> shown = new ArrayList<>();
        for (int later = first; later <= LATER_DAYS; later++) {
            assertThat(client.open(opening(later)).statusCode()).isEqualTo(201);
            assertThat(close(client, later).statusCode()).isEqualTo(200);
            shown.add(client.get("/days/" + day(later)).body());
        }
        return shown;
    }

    private String cached() throws Exception {
        return Files.readString(folder.resolve("closed-days.db"), StandardCharsets.ISO_8859_1);
    }

    private static long usesLearned(SalonClient client, int later) throws Exception {
        String opened = client.events(day(later)).get(0);
        return opened.split("\"usedMilligrams\"", -1).length - 1L;
    }

    @Test
    void days_at_rest_are_shown_teach_refuse_and_forget_as_before() throws Exception {
        List<String> shown;
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            shown = playOneAndCloseMany(client);
            assertThat(views(client)).isEqualTo(shown);
            assertThat(client.get("/days").body()).contains(day(0), day(LATER_DAYS));
            assertThat(usesLearned(client, LATER_DAYS)).isPositive().isEqualTo(usesLearned(client, 1));
            assertThat(close(client, 1).body()).contains("\"repeated\":true");
            assertThat(client.send(client.command(
                                    day(2), SmallSalon.request("start-late", new DayCommand.StartService(1))))
                            .body())
                    .contains("DAY_CLOSED");
            assertThat(client.get("/days/quay-house/2020-01-01").statusCode()).isEqualTo(404);
        }
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            assertThat(views(client)).isEqualTo(shown);
            assertThat(client.open(opening(LATER_DAYS + 1)).statusCode()).isEqualTo(201);
            assertThat(usesLearned(client, LATER_DAYS + 1)).isEqualTo(usesLearned(client, 1));
        }
        String kept = cached();
        for (int later = 0; later <= LATER_DAYS; later++) assertThat(kept).contains(day(later));
        Files.delete(folder.resolve("closed-days.db"));
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            assertThat(views(client)).isEqualTo(shown);
            assertThat(client.open(opening(LATER_DAYS + 2)).statusCode()).isEqualTo(201);
            assertThat(usesLearned(client, LATER_DAYS + 2)).isEqualTo(usesLearned(client, 1));
        }
    }

    /** Whole in memory as the metrics have it, which are counted at every change. */
    private static long inMemory(PlannerService service) throws Exception {
        return new SalonClient(service.managementPort())
                .get("/metrics")
                .body()
                .lines()
                .filter(line -> line.startsWith("stirtide_days_whole "))
                .mapToLong(line -> (long) Double.parseDouble(line.split(" ")[1]))
                .findFirst()
                .orElseThrow();
    }

    /** So that the clock need not go through hours in which nobody comes. */
    private static void cancelAll(SalonClient client, int later) throws Exception {
        for (int service = 1; service <= 4; service++)
            assertThat(client.send(client.command(
                                    day(later),
                                    SmallSalon.request(
                                            "cancel-" + later + "-" + service,
                                            new DayCommand.CancelService(service, "closed for the day"))))
                            .statusCode())
                    .isEqualTo(200);
    }

    private static void pass(SalonClient client, int later) throws Exception {
        assertThat(client.advance(SmallSalon.MORNING.plus(later, ChronoUnit.DAYS))
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void days_nobody_closes_come_to_rest_when_they_have_passed_and_can_still_be_closed() throws Exception {
        List<String> shown = new ArrayList<>();
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            for (int later = 0; later <= LATER_DAYS; later++) {
                pass(client, later);
                assertThat(client.open(opening(later)).statusCode()).isEqualTo(201);
                cancelAll(client, later);
            }
            pass(client, LATER_DAYS + 1);
            shown.addAll(views(client));
            assertThat(close(client, LATER_DAYS).statusCode()).isEqualTo(200);
            // The day that was open last, and the few that were looked at last.
            assertThat(inMemory(service)).isBetween(1L, 5L);
            assertThat(client.get("/days").body()).contains(day(0), day(LATER_DAYS));
        }
        assertThat(cached()).contains(day(0));
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            assertThat(views(client).subList(0, LATER_DAYS)).isEqualTo(shown.subList(0, LATER_DAYS));
            assertThat(close(client, 0).statusCode()).isEqualTo(200);
            assertThat(inMemory(service)).isBetween(1L, 5L);
            assertThat(client.get("/days/" + day(0)).body()).contains("\"closed\":true");
            assertThat(client.get("/days/" + day(1)).body()).contains("\"closed\":false");
        }
    }

    @Test
    void whoever_asks_while_a_day_is_being_read_gets_it_whole_and_an_erasure_misses_none() throws Exception {
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            List<String> shown = closeMany(client, 0);
            for (int round = 0; round < 3; round++) {
                List<CompletableFuture<HttpResponse<String>>> answers = new ArrayList<>();
                for (int asked = 0; asked < 4 * (LATER_DAYS + 1); asked++)
                    answers.add(client.sendLater(
                            client.request("/days/" + day(asked / 4)).build()));
                for (int asked = 0; asked < answers.size(); asked++)
                    assertThat(answers.get(asked).get().body()).isEqualTo(shown.get(asked / 4));
            }
            List<CompletableFuture<HttpResponse<String>>> beside = new ArrayList<>();
            for (int later = 0; later <= LATER_DAYS; later++)
                beside.add(
                        client.sendLater(client.request("/days/" + day(later)).build()));
            assertThat(client.send(client.post("/clients/erasure", new Reference("K1")))
                            .statusCode())
                    .isEqualTo(204);
            for (var answer : beside) assertThat(answer.get().statusCode()).isEqualTo(200);
            for (int later = 0; later <= LATER_DAYS; later++) {
                List<String> events = client.events(day(later));
                assertThat(events.get(events.size() - 1)).contains("ClientErased");
            }
        }
    }

    @Test
    void a_client_is_told_of_and_erased_from_days_at_rest_too() throws Exception {
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            closeMany(client, 0);
            String record = client.send(client.post("/clients/export", new Reference("K1")))
                    .body();
            for (int later = 0; later <= LATER_DAYS; later++) assertThat(record).contains(day(later));
            assertThat(client.send(client.post("/clients/erasure", new Reference("K1")))
                            .statusCode())
                    .isEqualTo(204);
            for (int later = 0; later <= LATER_DAYS; later++) {
                List<String> events = client.events(day(later));
                assertThat(events.get(events.size() - 1)).contains("ClientErased");
                assertThat(client.get("/days/" + day(later)).body()).doesNotContain("\"K1\"");
            }
        }
    }
}
