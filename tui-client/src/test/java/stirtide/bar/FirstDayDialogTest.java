package stirtide.bar;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpServer;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.json.ContractJson;
import stirtide.events.setup.Person;

/** A salon from nothing, asked for line by line. */
class FirstDayDialogTest {
    private static final Instant NOW = Instant.parse("2027-06-11T08:00:00Z");

    private final List<String> told = new ArrayList<>();
    private final Deque<String> typed = new ArrayDeque<>();

    private FirstDayDialog begin() {
        return new FirstDayDialog(prompt -> Optional.ofNullable(typed.poll()), told::add);
    }

    @Test
    void every_line_is_asked_again_until_it_fits_and_the_day_is_opened() throws Exception {
        var bodies = new ArrayList<String>();
        var server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/days", exchange -> {
            bodies.add(new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8));
            byte[] answer = bodies.size() == 1
                    ? "{\"detail\":\"Choose another day.\"}".getBytes(StandardCharsets.UTF_8)
                    : "{}".getBytes(StandardCharsets.UTF_8);
            exchange.sendResponseHeaders(bodies.size() == 1 ? 409 : 201, answer.length);
            exchange.getResponseBody().write(answer);
            exchange.close();
        });
        server.start();
        try {
            typed.addAll(List.of(
                    "", "Kelp Corner", "Mars/Base", "Europe/Lisbon", "XXZ", "EUR", "0", "3", "soon", "2027-06-12"));
            typed.addAll(List.of("Odile", "boss", "manager", "18:00-09:00", "09:00-18:00"));
            // What was typed before is offered again.
            typed.addAll(List.of("", "", "", "", "2027-06-13", "", "", ""));
            URI address = URI.create("http://127.0.0.1:" + server.getAddress().getPort());
            assertThat(begin().run(address, NOW))
                    .contains(new FirstDayDialog.Opened("kelp-corner/2027-06-13", "odile"));
        } finally {
            server.stop(0);
        }
        assertThat(told)
                .contains(
                        "  time zone takes a name such as Europe/Lisbon",
                        "  chairs takes a number from 1 to 100",
                        "  your hours today takes hours such as 09:00-18:00",
                        "not taken: Choose another day.");
        var request = ContractJson.read(bodies.get(1), CommandRequest.class);
        var open = (OpenDay) request.command();
        assertThat(request.actor()).isEqualTo("odile");
        assertThat(open.setup().date()).isEqualTo(LocalDate.parse("2027-06-13"));
        assertThat(open.setup().salon().people().get(0).role()).isEqualTo(Person.Role.MANAGER);
        assertThat(open.setup().menu().entries()).isEmpty();
    }

    @Test
    void nothing_is_opened_when_the_lines_end_or_no_service_answers() throws Exception {
        typed.add("Kelp Corner");
        assertThat(begin().run(URI.create("http://127.0.0.1:1"), NOW)).isEmpty();
        typed.addAll(List.of("Kelp Corner", "Europe/Lisbon", "", "", "", "Odile", "", ""));
        assertThat(begin().run(URI.create("http://127.0.0.1:1"), NOW)).isEmpty();
        assertThat(told.get(told.size() - 1)).contains("the service cannot be reached");
    }
}
