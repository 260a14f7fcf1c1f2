package stirtide.planner.salonfiles.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A value inside a JSON file that passed its schema, with its place.
 *
 * @param json the document
 * @param pointer JSON pointer of the value
 * @param node the value
 */
record LocatedValue(LocatedJson json, String pointer, JsonNode node) {
    LocatedValue at(String key) {
        return new LocatedValue(json, pointer + LocatedJson.step(key), node.path(key));
    }

    boolean has(String key) {
        return node.has(key);
    }

    List<LocatedValue> items(String key) {
        LocatedValue list = at(key);
        List<LocatedValue> items = new ArrayList<>();
        for (int i = 0; i < list.node.size(); i++) {
            items.add(new LocatedValue(json, list.pointer + "/" + i, list.node.get(i)));
        }
        return items;
    }

    /** Keys of an object, in the order written. */
    List<String> keys() {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    String text(String key) {
        return node.path(key).textValue();
    }

    boolean flag(String key) {
        return node.path(key).booleanValue();
    }

    int whole(String key) {
        return node.path(key).decimalValue().intValueExact();
    }

    int whole(String key, int otherwise) {
        return has(key) ? whole(key) : otherwise;
    }

    Optional<Integer> wholeIfAny(String key) {
        return has(key) ? Optional.of(whole(key)) : Optional.empty();
    }

    /** Grams as milligrams, factors as thousandths. The schema permits no more than three decimals. */
    int thousandths(String key) {
        return scaled(node.path(key).decimalValue(), 3);
    }

    Optional<Integer> thousandthsIfAny(String key) {
        return has(key) ? Optional.of(thousandths(key)) : Optional.empty();
    }

    /** Per cent as hundredths of a per cent. The schema permits no more than two decimals. */
    int hundredths(String key) {
        return scaled(node.path(key).decimalValue(), 2);
    }

    /** Levels and pH as tenths. The schema permits no more than one decimal. */
    int tenths(String key) {
        return scaled(node.path(key).decimalValue(), 1);
    }

    Optional<Integer> tenthsIfAny(String key) {
        return has(key) ? Optional.of(tenths(key)) : Optional.empty();
    }

    /** A ratio such as {@code "1:1.5"} as thousandths of developer per lightener. */
    int ratio(String key) {
        return scaled(new BigDecimal(text(key).substring(2)), 3);
    }

    private static int scaled(BigDecimal value, int decimals) {
        return value.movePointRight(decimals).intValueExact();
    }

    /** Refuses this value. */
    public void refuse(String accepted) {
        json.refuse(pointer, shown(), accepted);
    }

    /** Refuses this value and says what is wrong with it. */
    public void refuse(String value, String accepted) {
        json.refuse(pointer, value, accepted);
    }

    /** The value as written in the file. */
    String shown() {
        return node.isNumber() ? node.decimalValue().toPlainString() : node.toString();
    }
}
