package stirtide.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stirtide.events.json.ContractJson;

/** What the build brings along, by its bill of materials, is what docs/dependencies.md lists. */
class DependenciesIT {
    private static final Path DOCUMENT = Path.of("..", "docs", "dependencies.md");
    private static final Path BILL = Path.of("target", "bom.json");
    private static final Path EXPECTED = Path.of("target", "dependencies.table");

    private record Library(String group, String name, String version, String licenses) {
        String row() {
            return "| " + group + ":" + name + " | " + version + " | " + licenses + " |";
        }
    }

    private static List<Library> libraries() throws IOException {
        assertThat(BILL)
                .as("the bill of materials; Maven makes it online only, not with -o")
                .exists();
        List<Library> libraries = new ArrayList<>();
        for (JsonNode one :
                ContractJson.mapper().readTree(Files.readString(BILL)).get("components"))
            if (!one.path("group").asText().equals("stirtide"))
                libraries.add(new Library(
                        one.path("group").asText(),
                        one.get("name").asText(),
                        one.get("version").asText(),
                        licenses(one.path("licenses"))));
        return libraries;
    }

    private static String licenses(JsonNode choices) {
        List<String> names = new ArrayList<>();
        for (JsonNode choice : choices)
            names.add(
                    choice.has("expression")
                            ? choice.get("expression").asText()
                            : choice.at("/license/id")
                                    .asText(choice.at("/license/name").asText()));
        return String.join(" or ", names);
    }

    private static List<String> rows(String header) throws IOException {
        List<String> lines = Files.readAllLines(DOCUMENT);
        int from = lines.indexOf(header) + 2;
        return lines.subList(from, lines.size()).stream()
                .takeWhile(line -> line.startsWith("|"))
                .toList();
    }

    @Test
    void every_library_is_listed_with_its_version_and_license() throws IOException {
        List<String> expected = new ArrayList<>(
                new TreeSet<>(libraries().stream().map(Library::row).toList()));
        Files.write(EXPECTED, expected);
        assertThat(rows("| library | version | license |"))
                .as("the table of docs/dependencies.md; what it should be stands in demo-day/" + EXPECTED)
                .isEqualTo(expected);
        assertThat(libraries())
                .allSatisfy(library ->
                        assertThat(library.licenses()).as(library.row()).isNotBlank());
    }

    @Test
    void no_library_is_as_old_as_an_advisory_says_unless_the_reason_why_it_does_not_matter_is_given()
            throws IOException {
        List<String> open = new ArrayList<>();
        for (String row : rows("| advisory | libraries | mended in | why it does not matter here |")) {
            List<String> cells =
                    Arrays.stream(row.split("\\|", -1)).map(String::trim).toList();
            String old = libraries().stream()
                    .filter(library -> library.group().equals(cells.get(2)))
                    .filter(library -> older(library.version(), cells.get(3)))
                    .map(Library::row)
                    .collect(Collectors.joining(", "));
            if (!old.isEmpty() && cells.get(4).isEmpty()) open.add(cells.get(1) + ": " + old);
        }
        assertThat(open).isEmpty();
        assertThat(older("4.2.9.Final", "4.2.15")).isTrue();
        assertThat(older("4.2.20.Final", "4.2.15")).isFalse();
    }

    /** Compares the numbers of two versions. */
    private static boolean older(String version, String mended) {
        int[] here = numbers(version);
        int[] there = numbers(mended);
        return Arrays.compare(here, there) < 0;
    }

    private static int[] numbers(String version) {
        return Arrays.stream(version.split("[.-]"))
                .filter(part -> part.matches("[0-9]+"))
                .mapToInt(Integer::parseInt)
                .toArray();
    }
}
