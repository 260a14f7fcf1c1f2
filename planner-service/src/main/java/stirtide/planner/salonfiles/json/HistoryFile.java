package stirtide.planner.salonfiles.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.PastVisit.PastZone;
import stirtide.events.setup.SalonMemory;
import stirtide.events.setup.SwatchTest;
import stirtide.events.setup.UseHistory;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.events.setup.UseHistory.PastUse;

/**
 * {@code history.json}: what a salon knows from before it used this tool.
 *
 * @param visits what was mixed for clients
 * @param swatches test swatches
 * @param strips pH strips of test mixes
 * @param allowances rules of managers about zones of the menu
 * @param enoughPermille how often in a thousand allowances are to be enough, if a manager has set it
 */
public record HistoryFile(
        List<Visit> visits,
        List<SwatchTest> swatches,
        List<MixStrip> strips,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<AllowanceRule> allowances,
        Optional<Integer> enoughPermille) {

    /** A visit; one that names length and density of the hair teaches grams too. */
    public record Visit(
            LocalDate date,
            String clientRef,
            String menuId,
            Optional<String> length,
            Optional<String> density,
            List<PastZone> zones) {}

    /**
     * What a setup remembers. Grams of clients without a reference have no visit and are left out, and so are rules of zones
     * that are not on the menu.
     */
    public static HistoryFile of(DaySetup setup) {
        SalonMemory memory = setup.learned().remembered();
        return new HistoryFile(
                memory.visits().stream().map(visit -> visit(setup, visit)).toList(),
                memory.swatches(),
                memory.strips(),
                setup.learned().rules().stream()
                        .filter(rule ->
                                zone(setup.menu(), rule.menuId(), rule.zone()).isPresent())
                        .toList(),
                memory.fractionPermille());
    }

    private static Visit visit(DaySetup setup, PastVisit visit) {
        Optional<PastUse> use = setup.learned().uses().stream()
                .filter(one -> one.on().equals(visit.on())
                        && one.clientRef().equals(visit.clientRef())
                        && one.menuId().equals(visit.menuId()))
                .findFirst();
        return new Visit(
                visit.on(),
                visit.clientRef(),
                visit.menuId(),
                use.flatMap(one -> word(setup.menu().lengthPermille(), one.lengthPermille())),
                use.flatMap(one -> word(setup.menu().densityPermille(), one.densityPermille())),
                visit.zones());
    }

    /** The word of the menu for a factor; one that has no word any more is left out. */
    private static Optional<String> word(Map<String, Integer> factors, int permille) {
        return factors.entrySet().stream()
                .filter(factor -> factor.getValue() == permille)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** What the file gives a day: visits, swatches and strips oldest first, and grams of zones that are on the menu. */
    public UseHistory history(Menu menu) {
        List<PastUse> uses = new ArrayList<>();
        for (Visit visit : visits) uses.addAll(uses(visit, menu));
        uses.sort(Comparator.comparing(PastUse::on));
        List<PastVisit> past = visits.stream()
                .map(visit -> new PastVisit(visit.date(), visit.clientRef(), visit.menuId(), visit.zones()))
                .sorted(Comparator.comparing(PastVisit::on))
                .toList();
        SalonMemory memory = new SalonMemory(
                past,
                swatches.stream().sorted(Comparator.comparing(SwatchTest::on)).toList(),
                strips.stream().sorted(Comparator.comparing(MixStrip::on)).toList(),
                enoughPermille);
        return new UseHistory(uses, allowances, Optional.of(memory));
    }

    private static List<PastUse> uses(Visit visit, Menu menu) {
        Optional<Integer> length = visit.length().map(menu.lengthPermille()::get);
        Optional<Integer> density = visit.density().map(menu.densityPermille()::get);
        if (length.isEmpty() || density.isEmpty()) return List.of();
        List<PastUse> uses = new ArrayList<>();
        for (PastZone zone : visit.zones())
            zone(menu, visit.menuId(), zone.zone())
                    .map(known -> new PastUse(
                            visit.date(),
                            visit.menuId(),
                            zone.zone(),
                            visit.clientRef(),
                            known.baseMilligrams(),
                            length.get(),
                            density.get(),
                            zone.usedMilligrams(),
                            false))
                    .ifPresent(uses::add);
        return uses;
    }

    /** A zone of the menu. */
    public static Optional<MenuZone> zone(Menu menu, String menuId, String zone) {
        return menu.entries().stream()
                .filter(entry -> entry.menuId().equals(menuId))
                .flatMap(entry -> entry.zones().stream())
                .filter(one -> one.zone().equals(zone))
                .findFirst();
    }
}
