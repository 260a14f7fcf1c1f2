package stirtide.planner.salonfiles;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Directions;
import stirtide.planner.salonfiles.json.FieldPath;
import stirtide.planner.salonfiles.json.MenuFile;
import stirtide.planner.salonfiles.json.SalonFile;
import stirtide.planner.salonfiles.rules.FieldRanges;
import stirtide.planner.salonfiles.rules.MenuDirectionsRules;
import stirtide.planner.salonfiles.rules.MenuFileRules;
import stirtide.planner.salonfiles.rules.PriceRules;
import stirtide.planner.salonfiles.rules.ProductFileRules;
import stirtide.planner.salonfiles.rules.SalonFileRules;
import stirtide.planner.salonfiles.source.FileProblem;

/** Checks a setup that was changed at a terminal against the rules of the files. */
public final class SetupCheck {
    private static final int MOST_SHOWN = 3;

    private final DaySetup setup;
    private final List<FileProblem> problems = new ArrayList<>();

    private SetupCheck(DaySetup setup) {
        this.setup = setup;
    }

    /**
     * What a change brings that the files would not accept; what was wrong before does not count again.
     *
     * @param before what is in force
     * @param after what would be in force
     * @return a sentence with the fields, the values and what would be accepted; empty when nothing new is wrong
     */
    public static Optional<String> objection(DaySetup before, DaySetup after) {
        List<String> news = new ArrayList<>(lines(after));
        if (news.isEmpty()) return Optional.empty();
        for (String known : lines(before)) news.remove(known);
        if (news.isEmpty()) return Optional.empty();
        int shown = Math.min(MOST_SHOWN, news.size());
        String more = news.size() > shown ? " And " + (news.size() - shown) + " more." : "";
        return Optional.of(String.join(" ", news.subList(0, shown)) + more);
    }

    private static List<String> lines(DaySetup setup) {
        return problems(setup).stream().map(SetupCheck::line).toList();
    }

    /** Everything in a setup that the files would not accept, in the order of the files; places are JSON pointers. */
    static List<FileProblem> problems(DaySetup setup) {
        SetupCheck check = new SetupCheck(setup);
        check.salon();
        check.products();
        return check.problems.stream().distinct().toList();
    }

    private FieldPath file(String name) {
        return new FieldPath(
                name,
                "",
                (path, value, accepted) -> problems.add(new FileProblem(path.file(), path.pointer(), value, accepted)));
    }

    private void salon() {
        SalonFile salon = SalonFile.of(setup);
        FieldPath at = file("salon.json");
        if (FieldRanges.fit(salon, at)) SalonFileRules.check(salon, at);
    }

    private void products() {
        ProductFileRules rules =
                new ProductFileRules(PriceRules.in(setup.salon().currency()));
        FieldPath shelf = file("developers.json");
        if (FieldRanges.fit(setup.developers(), shelf)) rules.check(setup.developers(), shelf);
        List<Directions> readable = new ArrayList<>();
        for (Directions each : setup.directions()) {
            FieldPath at = file("directions/" + each.lightenerId() + ".json");
            if (!FieldRanges.fit(each, at)) continue;
            rules.check(each, setup.salon().handOverMinutes(), at);
            readable.add(each);
        }
        menu(new MenuDirectionsRules(readable, setup.developers()));
    }

    private void menu(MenuDirectionsRules directions) {
        MenuFile menu = MenuFile.of(setup.menu());
        FieldPath at = file("menu.json");
        if (!FieldRanges.fit(menu, at)) return;
        MenuFileRules.check(menu, at);
        directions.check(menu, at);
    }

    private static String line(FileProblem problem) {
        String last = problem.place().substring(problem.place().lastIndexOf('/') + 1);
        String field = last.isEmpty() || last.chars().allMatch(Character::isDigit) ? problem.file() : last;
        return words(field) + ": " + problem.value() + " is not accepted; accepted: " + problem.accepted() + ".";
    }

    /** The name of a field as a person at a terminal would say it. */
    private static String words(String field) {
        return field.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }
}
