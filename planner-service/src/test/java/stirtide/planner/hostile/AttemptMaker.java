package stirtide.planner.hostile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import stirtide.events.json.ContractJson;
import stirtide.planner.hostile.ContractBook.Operation;
import stirtide.planner.hostile.HostileSalons.Sender;

/** Draws requests over the whole contract: good ones, nearly good ones, and worse. Same seed, same requests. */
final class AttemptMaker {
    private static final List<String> METHODS =
            List.of("GET", "POST", "PUT", "DELETE", "HEAD", "OPTIONS", "PATCH", "TRACE", "PROPFIND");
    private static final List<String> ODD = List.of(
            "",
            " ",
            "%",
            "%zz",
            "%00",
            "..",
            "../..",
            "%2e%2e%2f",
            "%c0%ae",
            "-1",
            "0",
            "1.5",
            "99999999999999999999",
            "null",
            "a/b",
            "a%2Fb",
            "\u00fc",
            "%F0%9F%98%80",
            "';--",
            "x".repeat(300),
            "2027-02-30",
            "[]",
            "{}",
            "?",
            "#");

    private final ContractBook contract;
    private final List<Sender> senders;
    private final Random random;
    private final SchemaValues values;
    private final Spoiler spoiler;
    private final String code;
    private LocalDate date;

    AttemptMaker(ContractBook contract, HostileSalons salons, LocalDate date, long seed) {
        this.contract = contract;
        this.senders = salons.senders();
        this.code = salons.code();
        this.date = date;
        this.random = new Random(seed);
        this.values = new SchemaValues(contract, random);
        this.spoiler = new Spoiler(random);
    }

    /** From here on most requests are about this day. */
    void look(LocalDate newest) {
        date = newest;
    }

    Attempt next() {
        Operation operation =
                contract.operations().get(random.nextInt(contract.operations().size()));
        Sender sender = senders.get(random.nextInt(senders.size()));
        return switch (random.nextInt(12)) {
            case 0 -> spoiledBody(operation, sender);
            case 1 -> mangledBody(operation, sender);
            case 2 -> oddParameters(operation, sender);
            case 3 -> oddHeaders(operation, sender);
            case 4 -> oddMethod(operation, sender);
            case 5 -> oddPath(operation, sender);
            case 6, 7 -> spoiledCommand(sender);
            case 8, 9 -> command(sender);
            default -> good(operation, sender);
        };
    }

    private Attempt good(Operation operation, Sender sender) {
        return attempt("good", operation, sender, target(operation, false), bytes(body(operation)));
    }

    private Attempt command(Sender sender) {
        return good(contract.operation("sendCommand"), sender);
    }

    private Attempt spoiledCommand(Sender sender) {
        return spoiledBody(contract.operation("sendCommand"), sender);
    }

    private Attempt spoiledBody(Operation operation, Sender sender) {
        Optional<JsonNode> body = body(operation).map(spoiler::spoiled);
        return attempt("spoiled body", operation, sender, target(operation, false), bytes(body));
    }

    private Attempt mangledBody(Operation operation, Sender sender) {
        byte[] body = body(operation).map(spoiler::mangled).orElseGet(() -> spoiler.noise(100));
        return attempt("mangled body", operation, sender, target(operation, false), body);
    }

    private Attempt oddParameters(Operation operation, Sender sender) {
        return attempt("odd parameters", operation, sender, target(operation, true), bytes(body(operation)));
    }

    private Attempt oddHeaders(Operation operation, Sender sender) {
        String[] headers = switch (random.nextInt(10)) {
            case 0 -> new String[] {"If-Match", odd()};
            case 1 -> new String[] {"If-Match", "\"" + random.nextInt(200) + "\""};
            case 2 -> new String[] {"Last-Event-ID", odd()};
            case 3 -> new String[] {"Accept", "text/event-stream", "Last-Event-ID", "" + random.nextInt(50)};
            case 4 -> new String[] {"Content-Type", "text/plain"};
            case 5 -> new String[] {"Content-Type", "application/json; charset=utf-16"};
            case 6 -> new String[] {"Content-Type", "multipart/form-data; boundary=x"};
            case 7 -> new String[] {"Authorization", "Basic " + odd()};
            case 8 -> new String[] {"Accept", odd(), "Accept-Encoding", "gzip, br", "X-HTTP-Method-Override", "DELETE"};
            default -> new String[] {"Expect", "100-continue"};
        };
        byte[] body = bytes(body(operation));
        byte[] bytes = RequestText.of(operation.method(), target(operation, false), sender.token(), body, headers);
        return new Attempt("odd headers", Optional.of(operation), sender, bytes, false);
    }

    private Attempt oddMethod(Operation operation, Sender sender) {
        String method = METHODS.get(random.nextInt(METHODS.size()));
        byte[] bytes = RequestText.of(method, target(operation, false), sender.token(), bytes(body(operation)));
        Optional<Operation> meant = contract.operations().stream()
                .filter(one -> one.method().equals(method) && one.path().equals(operation.path()))
                .findFirst();
        return new Attempt("odd method", meant, sender, bytes, method.equals("HEAD"));
    }

    private Attempt oddPath(Operation operation, Sender sender) {
        String target = target(operation, false);
        int at = 1 + random.nextInt(target.length());
        String changed = target.substring(0, at) + odd().replace(" ", "") + target.substring(at);
        byte[] bytes = RequestText.of(operation.method(), changed, sender.token(), bytes(body(operation)));
        return new Attempt("odd path", Optional.of(operation), sender, bytes, false);
    }

    private Attempt attempt(String kind, Operation operation, Sender sender, String target, byte[] body) {
        byte[] bytes = RequestText.of(operation.method(), target, sender.token(), body);
        return new Attempt(kind, Optional.of(operation), sender, bytes, false);
    }

    private String odd() {
        return ODD.get(random.nextInt(ODD.size()));
    }

    private String target(Operation operation, boolean odd) {
        String path = operation.path();
        List<String> query = new ArrayList<>();
        for (JsonNode parameter : operation.parameters()) {
            String name = parameter.get("name").asText();
            boolean needed = parameter.path("required").asBoolean();
            String value = odd && random.nextInt(3) == 0 ? odd() : known(name, parameter);
            if (parameter.get("in").asText().equals("path")) path = path.replace("{" + name + "}", encoded(value, odd));
            else if (parameter.get("in").asText().equals("query") && (needed || random.nextBoolean()))
                query.add(name + "=" + encoded(value, odd));
        }
        return query.isEmpty() ? path : path + "?" + String.join("&", query);
    }

    /** Salons and days that there are, mostly; else what fits the schema. */
    private String known(String name, JsonNode parameter) {
        if (random.nextInt(10) > 0) {
            if (name.equals("salonId")) return HostileSalons.SALONS.get(random.nextInt(2));
            if (name.equals("date")) return date.toString();
        }
        return values.parameter(name, parameter.get("schema")).replace("2027-03-09", date.toString());
    }

    private static String encoded(String value, boolean odd) {
        return odd
                ? value.replace(" ", "+")
                : URLEncoder.encode(value, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private Optional<JsonNode> body(Operation operation) {
        if (operation.id().equals("openDay") && random.nextInt(3) > 0) return Optional.of(opening());
        return operation.body().map(values::value).map(this::named);
    }

    /** A day that can be opened: chance alone never finds one. */
    private JsonNode opening() {
        LocalDate later = date.plusDays(100L + random.nextInt(20));
        byte[] text = HostileSalons.opening(HostileSalons.SALONS.get(random.nextInt(2)), later);
        return ContractJson.read(new String(text, StandardCharsets.UTF_8), JsonNode.class);
    }

    /** Under the sender's own name and a fresh id: else nearly all would be refused for that. */
    private JsonNode named(JsonNode body) {
        if (body instanceof ObjectNode object && object.has("code") && random.nextInt(3) == 0)
            object.put("personId", "ada").put("code", code);
        if (body instanceof ObjectNode object && object.has("commandId") && random.nextInt(10) > 0)
            object.put("actor", "mika").put("commandId", new UUID(random.nextLong(), random.nextLong()).toString());
        return body;
    }

    private byte[] bytes(Optional<JsonNode> body) {
        return body.map(tree -> tree.toString().replace("2027-03-09", date.toString()))
                .map(text -> text.getBytes(StandardCharsets.UTF_8))
                .orElse(new byte[0]);
    }
}
