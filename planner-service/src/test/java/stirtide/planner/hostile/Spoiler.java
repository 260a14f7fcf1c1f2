package stirtide.planner.hostile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Makes good bodies bad: in one value, in their shape, or in their bytes. */
final class Spoiler {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Random random;

    Spoiler(Random random) {
        this.random = random;
    }

    private record Place(JsonNode parent, String name, int index) {}

    /** One value of the tree is replaced, left out or doubled; the rest stays good. */
    JsonNode spoiled(JsonNode good) {
        JsonNode tree = good.deepCopy();
        List<Place> places = new ArrayList<>();
        collect(tree, places);
        if (places.isEmpty()) return odd();
        Place place = places.get(random.nextInt(places.size()));
        if (place.parent() instanceof ObjectNode object) spoil(object, place.name());
        else ((ArrayNode) place.parent()).set(place.index(), odd());
        return tree;
    }

    private void spoil(ObjectNode object, String name) {
        switch (random.nextInt(6)) {
            case 0 -> object.remove(name);
            case 1 -> object.set(name + "2", object.get(name));
            case 2 -> object.set(name, NODES.arrayNode().add(object.get(name)));
            default -> object.set(name, odd());
        }
    }

    private static void collect(JsonNode node, List<Place> places) {
        if (node instanceof ObjectNode object)
            object.fieldNames().forEachRemaining(name -> {
                places.add(new Place(object, name, 0));
                collect(object.get(name), places);
            });
        for (int index = 0; node instanceof ArrayNode && index < node.size(); index++) {
            places.add(new Place(node, "", index));
            collect(node.get(index), places);
        }
    }

    private JsonNode odd() {
        return switch (random.nextInt(16)) {
            case 0 -> NODES.nullNode();
            case 1 -> NODES.numberNode(-1);
            case 2 -> NODES.numberNode(Integer.MAX_VALUE);
            case 3 -> NODES.numberNode(Long.MAX_VALUE);
            case 4 -> NODES.numberNode(BigInteger.TEN.pow(400));
            case 5 -> NODES.numberNode(new BigDecimal("1E+999999"));
            case 6 -> NODES.numberNode(1.5);
            case 7 -> NODES.booleanNode(true);
            case 8 -> NODES.objectNode();
            case 9 -> NODES.arrayNode();
            case 10 -> NODES.textNode("");
            case 11 -> NODES.textNode("y".repeat(65 + random.nextInt(70_000)));
            case 12 -> NODES.textNode("\u202e\u0000\u0007\ud83d\ude00\u0301\ufeff\r\ndata: x\n\n");
            case 13 -> NODES.textNode("'; DROP TABLE event; --<script>${jndi:x}%s%n../../etc");
            case 14 -> NODES.textNode("sealed:c000001:AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA");
            default -> NODES.numberNode(0);
        };
    }

    /** The bytes of a body are cut, changed, doubled, written otherwise or made huge. */
    byte[] mangled(JsonNode good) {
        String text = good.toString();
        return switch (random.nextInt(12)) {
            case 0 -> utf8(text.substring(0, random.nextInt(text.length() + 1)));
            case 1 -> utf8(text + text);
            case 2 -> utf8("\ufeff" + text);
            case 3 -> text.getBytes(StandardCharsets.UTF_16);
            case 4 -> flipped(utf8(text));
            case 5 -> utf8("[".repeat(1 + random.nextInt(60_000)));
            case 6 -> utf8("{\"a\":".repeat(3_000) + text + "}".repeat(3_000));
            case 7 -> utf8(text.replaceFirst("\\{", "{\"actor\":\"ada\",\"actor\":NaN,"));
            case 8 -> utf8(text.replaceFirst("\"", "\"\\\\ud800"));
            case 9 -> utf8("/* x */" + text.replace('"', '\''));
            case 10 -> utf8("\"" + "z".repeat(random.nextInt(400_000)) + "\"");
            default -> noise(random.nextInt(2_000));
        };
    }

    private byte[] flipped(byte[] bytes) {
        for (int times = 0; times < 3 && bytes.length > 0; times++)
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        return bytes;
    }

    /** Bytes without any sense. */
    byte[] noise(int length) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int at = 0; at < length; at++) bytes.write(random.nextInt(256));
        return bytes.toByteArray();
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
