package stirtide.planner.salonfiles;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.planner.salonfiles.export.SetupFiles;
import stirtide.planner.salonfiles.json.FileSchema;
import stirtide.planner.salonfiles.json.LocatedJson;
import stirtide.planner.salonfiles.json.LocatedJsonParser;
import stirtide.planner.salonfiles.json.MenuCheck;
import stirtide.planner.salonfiles.json.MenuReader;
import stirtide.planner.salonfiles.json.ProductReader;
import stirtide.planner.salonfiles.json.SalonReader;
import stirtide.planner.salonfiles.source.FileProblem;
import stirtide.planner.salonfiles.source.ProblemCollector;
import stirtide.planner.salonfiles.source.SourceFile;

/** Holds a setup that was changed at a terminal against the rules of the files, by the code that reads the files. */
public final class SetupCheck {
    private static final int MOST_TOLD = 3;

    private SetupCheck() {}

    /**
     * What a change brings that the files would not accept; what was wrong before does not count again.
     *
     * @param before what is in force
     * @param after what would be in force
     * @return a sentence with the places, the values and what would be accepted; empty when nothing new is wrong
     */
    public static Optional<String> objection(DaySetup before, DaySetup after) {
        List<String> news = new ArrayList<>(lines(after));
        if (news.isEmpty()) return Optional.empty();
        for (String known : lines(before)) news.remove(known);
        if (news.isEmpty()) return Optional.empty();
        int told = Math.min(MOST_TOLD, news.size());
        String more = news.size() > told ? " And " + (news.size() - told) + " more." : "";
        return Optional.of(String.join(" ", news.subList(0, told)) + more);
    }

    private static List<String> lines(DaySetup setup) {
        ProblemCollector problems = new ProblemCollector();
        read(setup, problems);
        if (problems.none()) return List.of();
        return problems.refusal().problems().stream().map(SetupCheck::line).toList();
    }

    /** Without line and column, which a person at a terminal has never seen. */
    private static String line(FileProblem problem) {
        String pointer = problem.place().replaceFirst(" ?line .*", "");
        String last = pointer.substring(pointer.lastIndexOf('/') + 1);
        String field = last.isEmpty() || last.chars().allMatch(Character::isDigit) ? problem.file() : last;
        return words(field) + ": " + problem.value() + " is not accepted; accepted: " + problem.accepted() + ".";
    }

    /** The name of a field as a person at a terminal would say it. */
    private static String words(String field) {
        return field.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    private static void read(DaySetup setup, ProblemCollector problems) {
        SortedMap<String, ObjectNode> documents = SetupFiles.documents(setup);
        Optional<SalonReader> salon = Optional.empty();
        Optional<LocatedJson> salonJson = fitting(documents, "salon.json", FileSchema.SALON, problems, 0);
        if (salonJson.isPresent()) salon = Optional.of(new SalonReader(salonJson.get()));
        ProductReader products = new ProductReader(salon.flatMap(SalonReader::currency));
        List<Developer> developers = fitting(documents, "developers.json", FileSchema.DEVELOPERS, problems, 1)
                .map(products::developers)
                .orElse(setup.developers());
        List<Directions> directions = new ArrayList<>();
        int handOver = setup.salon().handOverMinutes();
        for (String name : documents.keySet())
            if (name.startsWith("directions/"))
                fitting(documents, name, FileSchema.DIRECTIONS, problems, 2)
                        .map(json -> products.directions(json, handOver))
                        .ifPresent(directions::add);
        fitting(documents, "menu.json", FileSchema.MENU, problems, 3)
                .map(MenuReader::new)
                // Without an entry there is nothing to hold against the leaflets yet.
                .filter(menu -> !setup.menu().entries().isEmpty())
                .ifPresent(menu -> new MenuCheck(directions, developers).check(menu));
    }

    /** A document that fits its schema. Lists a salon has not begun yet are stood in for, so that the rest can be read. */
    private static Optional<LocatedJson> fitting(
            SortedMap<String, ObjectNode> documents,
            String name,
            FileSchema schema,
            ProblemCollector problems,
            int rank) {
        ObjectNode document = documents.get(name);
        if (document == null) return Optional.empty();
        for (String list : List.of("people", "scales", "bowls", "developers", "entries"))
            if (document.get(list) instanceof ArrayNode none && none.isEmpty())
                document.set(list, SetupPlaceholders.of(list));
        return LocatedJsonParser.parse(document.toPrettyString(), new SourceFile(name, rank, problems))
                .filter(schema::fits);
    }
}
