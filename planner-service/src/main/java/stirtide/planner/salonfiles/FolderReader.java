package stirtide.planner.salonfiles;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu;
import stirtide.events.setup.UseHistory;
import stirtide.planner.salonfiles.json.DevelopersFile;
import stirtide.planner.salonfiles.json.FieldPath.Located;
import stirtide.planner.salonfiles.json.FileJson;
import stirtide.planner.salonfiles.json.FileSchema;
import stirtide.planner.salonfiles.json.HistoryFile;
import stirtide.planner.salonfiles.json.MenuFile;
import stirtide.planner.salonfiles.json.SalonFile;
import stirtide.planner.salonfiles.rules.MenuDirectionsRules;
import stirtide.planner.salonfiles.rules.MenuFileRules;
import stirtide.planner.salonfiles.rules.PriceRules;
import stirtide.planner.salonfiles.rules.ProductFileRules;
import stirtide.planner.salonfiles.rules.SalonFileRules;
import stirtide.planner.salonfiles.rules.VisitHistoryRules;
import stirtide.planner.salonfiles.source.FileProblem;
import stirtide.planner.salonfiles.source.ProblemCollector;
import stirtide.planner.salonfiles.source.SourceFile;
import stirtide.planner.salonfiles.source.TextFileReader;

/** One reading of a folder: each file on its own first, then all of them together. */
final class FolderReader {
    private static final String HISTORY_JSON = "history.json";
    private static final int MOST_DIRECTIONS = 100;

    private final Path folder;
    private final Optional<LocalDate> asked;
    private final ProblemCollector problems = new ProblemCollector();
    private PriceRules prices = new PriceRules(Optional.empty());
    private int rank;

    FolderReader(Path folder, Optional<LocalDate> asked) {
        this.folder = folder;
        this.asked = asked;
    }

    FolderResult read() {
        if (!Files.isDirectory(folder)) {
            source(".").refuse(folder.toString(), "a folder that exists");
            return refusal();
        }
        Optional<Located<SalonFile>> salon = json("salon.json", FileSchema.SALON, SalonFile.class);
        salon.ifPresent(each -> SalonFileRules.check(each.value(), each.path()));
        salon.ifPresent(each -> prices = PriceRules.in(each.value().currency()));
        ProductFileRules products = new ProductFileRules(prices);
        List<Developer> developers = developers(products);
        List<Directions> directions = directions(
                products, salon.map(each -> each.value().handOverMinutes()).orElse(0));
        boolean shelfKnown = problems.none();
        Optional<Located<MenuFile>> menu = json("menu.json", FileSchema.MENU, MenuFile.class);
        menu.ifPresent(each -> MenuFileRules.check(each.value(), each.path()));
        if (shelfKnown)
            menu.ifPresent(each -> new MenuDirectionsRules(directions, developers).check(each.value(), each.path()));
        Optional<UseHistory> history = menu.flatMap(each -> history(each.value().menu()));
        Optional<DayReader.BookedDay> day = new DayReader(folder, asked, problems, salon, menu).read(this::source);
        if (!problems.none() || day.isEmpty()) return refusal();
        DaySetup setup = new DaySetup(
                day.get().date(),
                day.get().salon(),
                developers,
                directions,
                menu.orElseThrow().value().menu(),
                history,
                salon.orElseThrow().value().allowancePolicy().map(prices::scaled));
        return new FolderResult.Read(setup, day.get().bookings(), day.get().notes());
    }

    private FolderResult refusal() {
        List<FileProblem> found = problems.inOrder();
        int shown = Math.min(found.size(), FolderResult.Rejected.MOST_SHOWN);
        return new FolderResult.Rejected(found.subList(0, shown), found.size() - shown);
    }

    private List<Developer> developers(ProductFileRules products) {
        Optional<Located<DevelopersFile>> file = json("developers.json", FileSchema.DEVELOPERS, DevelopersFile.class);
        file.ifPresent(each -> products.check(each.value().developers(), each.path()));
        return file.stream()
                .flatMap(each -> each.value().developers().stream())
                .map(prices::scaled)
                .toList();
    }

    private List<Directions> directions(ProductFileRules products, int handOverMinutes) {
        List<Directions> read = new ArrayList<>();
        for (String name : directionsNames()) {
            Optional<Located<Directions>> file = json("directions/" + name, FileSchema.DIRECTIONS, Directions.class);
            file.ifPresent(each -> products.check(each.value(), handOverMinutes, each.path()));
            file.map(each -> prices.scaled(each.value())).ifPresent(read::add);
        }
        return read;
    }

    /** Files of the folder of directions in the order of their names. Hidden files are left out. */
    private List<String> directionsNames() {
        SourceFile source = source("directions");
        List<String> names = List.of();
        try (Stream<Path> files = Files.list(folder.resolve("directions"))) {
            names = files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.startsWith("."))
                    .limit(MOST_DIRECTIONS + 1L)
                    .sorted()
                    .toList();
        } catch (IOException | UncheckedIOException unreadable) {
            source.refuse("(no such folder)", "a folder with one file of directions for each lightener");
            return List.of();
        }
        if (names.isEmpty()) source.refuse("(empty)", "one file of directions for each lightener");
        if (names.size() > MOST_DIRECTIONS) source.refuse("(too many files)", "at most " + MOST_DIRECTIONS + " files");
        names.stream()
                .filter(name -> !name.endsWith(".json"))
                .forEach(name -> source.refuse(name, "only files whose names end in .json"));
        return names.stream()
                .filter(name -> name.endsWith(".json"))
                .limit(MOST_DIRECTIONS)
                .toList();
    }

    /** What a salon brings along from before; a folder without the file remembers nothing. */
    private Optional<UseHistory> history(Menu menu) {
        if (!Files.exists(folder.resolve(HISTORY_JSON))) return Optional.empty();
        Optional<Located<HistoryFile>> file = json(HISTORY_JSON, FileSchema.HISTORY, HistoryFile.class);
        file.ifPresent(each -> new VisitHistoryRules(menu).check(each.value(), each.path()));
        return file.map(each -> each.value().history(menu));
    }

    private <T> Optional<Located<T>> json(String name, FileSchema schema, Class<T> type) {
        SourceFile source = source(name);
        return TextFileReader.read(folder.resolve(name), source)
                .flatMap(text -> FileJson.read(text, source, schema, type));
    }

    private SourceFile source(String name) {
        return new SourceFile(name, rank++, problems);
    }
}
