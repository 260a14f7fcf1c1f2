package stirtide.bar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.CommandResult;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;

/** A stand-in for the service: shows a fixed day, takes commands once each, can hang up and can refuse. */
public final class FakeService implements AutoCloseable {
    /** What the terminal sends while the service asks who it is. */
    public static final String TERMINAL_TOKEN = "terminal";

    /** The one code it takes, from everybody. */
    public static final String CODE = "123456";

    private final HttpServer server;
    private final List<OutputStream> lines = new CopyOnWriteArrayList<>();
    private final List<CommandRequest> taken = Collections.synchronizedList(new ArrayList<>());
    private final Map<String, String> refusals = new HashMap<>();
    private final boolean driven;
    private volatile DayView view;
    private volatile int ratePermille = 1000;
    private volatile boolean broken;
    private volatile boolean asks;
    private volatile int lockedSeconds;
    private volatile String person = "";

    public FakeService(DayView view, boolean driven, int port) throws IOException {
        this.view = view;
        this.driven = driven;
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
        server.setExecutor(Executors.newCachedThreadPool(task -> {
            var thread = new Thread(task, "fake service");
            thread.setDaemon(true);
            return thread;
        }));
        server.createContext("/days/", this::day);
        server.createContext("/clock", this::clock);
        server.createContext("/sign-on", this::signOn);
        server.start();
    }

    public URI address() {
        return URI.create("http://127.0.0.1:" + server.getAddress().getPort());
    }

    /** Commands taken, each once. */
    public List<CommandRequest> taken() {
        synchronized (taken) {
            return List.copyOf(taken);
        }
    }

    /** From now on every request is answered with 503 and every line is cut. */
    public void breakDown() throws IOException {
        broken = true;
        for (OutputStream line : lines) line.close();
        lines.clear();
    }

    public void recover() {
        broken = false;
    }

    /** From now on everybody must bring a token: the terminal's, or a person's made by signing on. */
    public void asksWhoItIs() {
        asks = true;
    }

    /** Who is signed on, empty text for nobody. */
    public String signedOn() {
        return person;
    }

    /** As a restart of the service does. */
    public void forgetSignOns() {
        person = "";
    }

    /** No code is looked at for so long. */
    public void lockFor(int seconds) {
        lockedSeconds = seconds;
    }

    /** Refuses every command of a type, named as in JSON, with a sentence. */
    public void refuse(String type, String sentence) {
        refusals.put(type, sentence);
    }

    public void show(DayView newer) {
        view = newer;
        tellAll("id: " + view.revision() + "\nevent: day\ndata: " + ContractJson.write(view) + "\n\n");
    }

    public void beat() {
        tellAll(": still here\n\n");
    }

    // A terminal that has left is no trouble.
    private void tellAll(String text) {
        for (OutputStream line : lines) {
            try {
                write(line, text);
            } catch (IOException left) {
                lines.remove(line);
            }
        }
    }

    public int listeners() {
        return lines.size();
    }

    private void day(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath();
        if (broken) answer(exchange, 503, "{\"detail\":\"not now\"}");
        else if (!isKnown(exchange)) return;
        else if (!path.startsWith("/days/" + Samples.DAY))
            answer(exchange, 404, "{\"detail\":\"no such day: " + path + "\"}");
        else if (path.endsWith("/live")) live(exchange);
        else if (path.endsWith("/commands")) command(exchange);
        else answer(exchange, 200, ContractJson.write(view));
    }

    private void live(HttpExchange exchange) throws IOException {
        exchange.getResponseHeaders().set("Content-Type", "text/event-stream");
        exchange.sendResponseHeaders(200, 0);
        OutputStream line = exchange.getResponseBody();
        write(line, "id: " + view.revision() + "\nevent: day\ndata: " + ContractJson.write(view) + "\n\n");
        lines.add(line);
    }

    private static void write(OutputStream line, String text) throws IOException {
        line.write(text.getBytes(StandardCharsets.UTF_8));
        line.flush();
    }

    private static String token(HttpExchange exchange) {
        String header = exchange.getRequestHeaders().getFirst("Authorization");
        return header == null ? "" : header.replace("Bearer ", "");
    }

    private boolean isKnown(HttpExchange exchange) throws IOException {
        String token = token(exchange);
        boolean ofPerson = !person.isEmpty() && token.equals("person-" + person);
        if (!asks || ofPerson || token.equals(TERMINAL_TOKEN)) return true;
        exchange.getRequestBody().readAllBytes();
        answer(exchange, 401, "{\"detail\":\"this sign-on has ended; sign on again\"}");
        return false;
    }

    private void signOn(HttpExchange exchange) throws IOException {
        if (broken) {
            answer(exchange, 503, "{\"detail\":\"not now\"}");
            return;
        }
        if (!isKnown(exchange)) return;
        boolean terminal = token(exchange).equals(TERMINAL_TOKEN);
        if (exchange.getRequestMethod().equals("POST")) tryCode(exchange);
        else if (exchange.getRequestMethod().equals("DELETE")) {
            person = "";
            exchange.sendResponseHeaders(204, -1);
            exchange.close();
        } else answer(exchange, 200, "{\"needed\":" + (asks && terminal) + "}");
    }

    private void tryCode(HttpExchange exchange) throws IOException {
        var typed = ContractJson.mapper().readTree(exchange.getRequestBody());
        if (lockedSeconds > 0) {
            exchange.getResponseHeaders().set("Retry-After", "" + lockedSeconds);
            answer(exchange, 429, "{\"detail\":\"too many wrong codes\"}");
        } else if (!typed.path("code").asText().equals(CODE)) {
            answer(exchange, 401, "{\"detail\":\"person or code is wrong\"}");
        } else {
            person = typed.path("personId").asText();
            answer(
                    exchange,
                    201,
                    "{\"needed\":false,\"actor\":\"" + person + "\",\"role\":\"assistant\",\"token\":\"person-" + person
                            + "\"}");
        }
    }

    private void command(HttpExchange exchange) throws IOException {
        String body = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
        var request = ContractJson.read(body, CommandRequest.class);
        String type = request.command().getClass().getSimpleName();
        if (refusals.containsKey(type)) {
            answer(exchange, 409, "{\"detail\":\"" + refusals.get(type) + "\"}");
            return;
        }
        boolean repeated = taken().stream().anyMatch(known -> known.commandId().equals(request.commandId()));
        if (!repeated) taken.add(request);
        answer(exchange, 200, ContractJson.write(new CommandResult(request.commandId(), 42, 42, repeated)));
    }

    private void clock(HttpExchange exchange) throws IOException {
        if (exchange.getRequestMethod().equals("PUT")) {
            String body = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
            ratePermille = Integer.parseInt(body.replaceAll("\\D", ""));
        }
        answer(
                exchange,
                200,
                "{\"now\":\"" + view.time() + "\",\"ratePermille\":" + ratePermille + ",\"driven\":" + driven + "}");
    }

    private static void answer(HttpExchange exchange, int status, String body) throws IOException {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        exchange.sendResponseHeaders(status, bytes.length);
        try (OutputStream out = exchange.getResponseBody()) {
            out.write(bytes);
        }
    }

    @Override
    public void close() {
        server.stop(0);
    }

    /**
     * Shows a day for trials by hand: {@code FakeService PORT [driven] [crowded] [storm] [hours] [steps]}. Crowded are nine
     * live bowls; a storm is ten views a second, with hours each a second later by the salon's clock; with steps every
     * line on standard input shows a view whose newest action is that line, and the line {@code fault} one that no program
     * can draw.
     */
    public static void main(String[] arguments) throws Exception {
        List<String> words = List.of(arguments);
        DayView first = words.contains("crowded") ? Samples.crowded() : Samples.busy();
        var service = new FakeService(first, words.contains("driven"), Integer.parseInt(arguments[0]));
        System.out.println(service.address());
        if (words.contains("steps")) {
            var lines = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
            for (String line = lines.readLine(); line != null; line = lines.readLine())
                service.show(line.equals("fault") ? inNoZone() : Samples.lastAction(line));
            return;
        }
        run(service, words.contains("storm"), words.contains("hours") ? 1 : 37);
    }

    private static DayView inNoZone() {
        var tree = ContractJson.mapper().<ObjectNode>valueToTree(Samples.busy());
        return ContractJson.read(tree.put("zone", "Nowhere/Else").toString(), DayView.class);
    }

    private static void run(FakeService service, boolean storm, int stepSeconds) throws InterruptedException {
        Instant now = Samples.NOW;
        // Ends: with the process; this is a tool for the bench.
        while (true) {
            Thread.sleep(storm ? 100 : 5000);
            now = now.plus(Duration.ofSeconds(stepSeconds));
            if (storm) service.show(Samples.at(now));
            else service.beat();
        }
    }
}
