package stirtide.bar.client;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stirtide.events.command.CommandRequest;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.CloudEvent;
import stirtide.events.json.ContractJson;
import stirtide.events.json.UnreadableEvent;
import stirtide.events.view.DayView;
import stirtide.events.view.PourAdvice;
import stirtide.events.view.SetupView;

/** One day of one salon at a service. Blocks and fails as {@link ServiceClient} does. */
public final class DayClient {
    /** A question to the planner may need a plan of its own. */
    private static final Duration WHAT_IF_TIMEOUT = Duration.ofSeconds(60);

    private static final int EVENTS_PER_PAGE = 100;
    private static final long SILENCE_MILLIS = 20_000;

    private final ServiceClient service;
    private final String path;

    /** A day named by salon id and date: {@code harbor-loft/2027-05-14}. */
    public DayClient(ServiceClient service, String name) {
        this.service = service;
        path = "/days/" + name;
    }

    /** The service the day is at. */
    public ServiceClient service() {
        return service;
    }

    /** The day as terminals show it. */
    public DayView view() throws IOException, InterruptedException {
        return read(get(""), DayView.class);
    }

    /** What is in force on the day. */
    public SetupView setup() throws IOException, InterruptedException {
        return read(get("/setup"), SetupView.class);
    }

    /** Sends a command; the service accepts one id once, however often it is sent. */
    public CommandAnswer send(CommandRequest command) throws InterruptedException {
        try {
            return service.command(path + "/commands", command);
        } catch (IOException unreachable) {
            return new CommandAnswer.Undecided(ResponseText.reason(unreachable));
        }
    }

    /** What to pour next into a bowl, empty when the service does not say. */
    public Optional<PourAdvice> nextPour(String bowl, String poured) throws IOException, InterruptedException {
        HttpRequest request = service.get(path + "/bowls/" + bowl + "/next-pour?poured=" + poured);
        HttpResponse<String> response = service.send(request);
        if (response.statusCode() != 200) return Optional.empty();
        try {
            return Optional.of(ContractJson.read(response.body(), PourAdvice.class));
        } catch (IllegalArgumentException otherContract) {
            return Optional.empty();
        }
    }

    /**
     * Asks the planner what something would do, without doing it.
     *
     * @param question path and query below the day, such as {@code /moves}
     * @return the answer as JSON of the contract
     */
    public String whatIf(String question) throws IOException, InterruptedException {
        HttpRequest request =
                service.request(path + question).timeout(WHAT_IF_TIMEOUT).build();
        return service.sendChecked(request).body();
    }

    /** Everything that has happened on the day so far, in order. */
    public List<StoredEvent> events() throws IOException, InterruptedException {
        var events = new ArrayList<StoredEvent>();
        long newest = 1;
        while (events.size() < newest) {
            JsonNode page = ResponseText.tree(get("/events?limit=" + EVENTS_PER_PAGE + "&after=" + events.size()));
            newest = page.path("newest").asLong();
            if (page.path("events").isEmpty()) break;
            for (JsonNode event : page.path("events")) events.add(stored(event));
        }
        return events;
    }

    private static StoredEvent stored(JsonNode event) throws IOException {
        try {
            return CloudEvent.read(event.toString()).toStored();
        } catch (UnreadableEvent unreadable) {
            throw new IOException("an event cannot be read: " + unreadable.getMessage(), unreadable);
        }
    }

    /**
     * Connects to the live views.
     *
     * @param lastEventId id of the last event received, empty text to begin with the newest view
     * @param listener called by {@link LiveViewReader#read} on the thread that reads
     */
    public LiveViewReader live(String lastEventId, EventStreamParser.Listener listener) throws IOException {
        // With the terminal's own token: the stream outlasts the people who sign on and off.
        HttpRequest.Builder request = service.requestAsTerminal(path + "/live").header("Accept", "text/event-stream");
        if (!lastEventId.isEmpty()) request.header("Last-Event-ID", lastEventId);
        return new LiveViewReader(service.http(), request.build(), listener);
    }

    /**
     * Follows every live view on the calling thread until the stream ends, falls silent for 20 seconds or the thread is
     * interrupted.
     *
     * @return why it ended, for people
     */
    public String follow(Consumer<DayView> views) throws IOException, InterruptedException {
        var received = new ArrayList<DayView>();
        var listener = new EventStreamParser.Listener() {
            @Override
            public void event(byte[] bytes, int length) {
                received.add(ContractJson.read(bytes, length, DayView.class));
            }

            @Override
            public void comment() {
                // Only says that the service is still there.
            }
        };
        try (LiveViewReader stream = live("", listener)) {
            // Ends: a stream ends or falls silent.
            while (stream.read(SILENCE_MILLIS) == LiveViewReader.Result.RECEIVED) {
                received.forEach(views);
                received.clear();
            }
            return stream.endReason();
        }
    }

    private String get(String below) throws IOException, InterruptedException {
        return service.sendChecked(service.get(path + below)).body();
    }

    private static <T> T read(String json, Class<T> type) throws IOException {
        try {
            return ContractJson.read(json, type);
        } catch (IllegalArgumentException otherContract) {
            throw ResponseText.otherVersion(otherContract);
        }
    }
}
