package stirtide.planner.salonfiles;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import stirtide.events.json.ContractJson;
import stirtide.events.setup.DaySetup;

/** Makes setups that differ from a good one in a single value, around every bound that a file knows. */
final class SetupVariants {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final Map<String, List<Integer>> NUMBERS_BY_UNIT = Map.of(
            "Minutes", List.of(-1, 0, 1, 30, 31, 120, 121, 240, 241, 480, 481),
            "Hours", List.of(0, 1, 336, 337),
            "Permille/", List.of(99, 100, 5000, 5001),
            "Hundredths", List.of(-1, 0, 1, 300, 900, 901, 1200, 1201),
            "Thousandths", List.of(-1, 0, 1, 1000, 3000, 3001, 99_999, 100_000),
            "Milligrams",
                    List.of(
                            -1,
                            0,
                            1,
                            30,
                            100,
                            101,
                            200_000,
                            200_001,
                            500_000,
                            500_001,
                            1_000_000,
                            1_000_001,
                            2_000_000,
                            2_000_001,
                            10_000_000,
                            10_000_001,
                            100_000_000,
                            100_000_001,
                            1_000_000_000,
                            1_000_000_001));
    private static final List<Integer> OTHER_NUMBERS = List.of(-1, 0, 1, 20, 21, 100, 101, 200, 201);
    private static final List<String> TEXTS = List.of(
            "",
            " ",
            "x",
            "UPPER",
            "a".repeat(40),
            "a".repeat(41),
            "a".repeat(80),
            "a".repeat(81),
            "a".repeat(300),
            "a".repeat(301),
            "quo\"te\\d",
            "powder",
            "2027-05-14T09:30:30Z",
            "2027-05-13T22:00:00Z",
            "2027-05-14T23:00:00Z",
            "2027-05-15T01:00:00Z");
    private static final List<String> WORDS = List.of("Short", "a b-c", "a".repeat(24), "a".repeat(25), "9x");
    private static final List<String> PRICES =
            List.of("0", "0.00", "8.905", "8.9", "9999999.99", "10000000", "-1", "0.1234", "1E+2");
    private static final int[] SIZES = {6, 15};

    private final JsonNode root;
    private final BiConsumer<String, DaySetup> each;
    private final Set<String> given = new HashSet<>();

    private SetupVariants(DaySetup setup, BiConsumer<String, DaySetup> each) {
        root = ContractJson.mapper().valueToTree(setup);
        this.each = each;
    }

    /** Gives every variant with the place and value of its difference. */
    static void of(DaySetup setup, BiConsumer<String, DaySetup> each) {
        SetupVariants variants = new SetupVariants(setup, each);
        for (String part : List.of("salon", "developers", "directions", "menu"))
            variants.vary(variants.root.get(part), "/" + part);
    }

    private void vary(JsonNode node, String at) {
        if (node instanceof ObjectNode object) fields(object, at);
        if (node instanceof ArrayNode list) elements(list, at);
    }

    private void fields(ObjectNode object, String at) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        for (String key : keys) {
            JsonNode old = object.get(key);
            values(old, at + "/" + key).forEach(value -> {
                object.set(key, value);
                give(at + "/" + key + "=" + value);
            });
            object.set(key, old);
            vary(old, at + "/" + key);
            if (at.endsWith("Permille")) words(object, key, at);
        }
    }

    private void words(ObjectNode factors, String key, String at) {
        JsonNode factor = factors.remove(key);
        for (String word : WORDS) {
            factors.set(word, factor);
            give(at + "/" + word);
            factors.remove(word);
        }
        factors.set(key, factor);
    }

    private void elements(ArrayNode list, String at) {
        List<JsonNode> all = new ArrayList<>();
        list.forEach(all::add);
        for (int i = 0; i < all.size(); i++) {
            JsonNode old = all.get(i);
            int index = i;
            values(old, at).forEach(value -> {
                list.set(index, value);
                give(at + "/" + index + "=" + value);
            });
            list.set(i, old);
            vary(old, at + "/" + i);
        }
        if (all.isEmpty()) return;
        list.add(all.get(0).deepCopy());
        give(at + " with its first twice");
        for (int size : SIZES) {
            while (list.size() < size) list.add(all.get(0).deepCopy());
            give(at + " of " + size);
        }
        list.removeAll();
        give(at + " empty");
        list.addAll(all);
    }

    private static Stream<JsonNode> values(JsonNode old, String at) {
        if (old.isTextual()) return TEXTS.stream().map(NODES::textNode);
        if (old.isNumber() && !old.isIntegralNumber())
            return PRICES.stream().map(price -> NODES.numberNode(new BigDecimal(price)));
        if (!old.isIntegralNumber() && !old.isNull()) return Stream.of();
        return NUMBERS_BY_UNIT.entrySet().stream()
                .filter(unit -> at.contains(unit.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(OTHER_NUMBERS)
                .stream()
                .map(NODES::numberNode);
    }

    /** Of values in lists only the first of their kind is varied. */
    private void give(String name) {
        if (!given.add(name.replaceAll("/[0-9]+", "/*"))) return;
        try {
            each.accept(name, ContractJson.mapper().treeToValue(root, DaySetup.class));
        } catch (JsonProcessingException refusedByTheContract) {
            // The record itself does not permit it.
        }
    }
}
