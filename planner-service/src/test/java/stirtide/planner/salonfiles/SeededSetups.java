package stirtide.planner.salonfiles;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import stirtide.events.day.Booking;
import stirtide.events.day.ClientTests;
import stirtide.events.setup.AllowancePolicy;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.PastVisit.PastZone;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.events.setup.SalonMemory;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Span;
import stirtide.events.setup.SwatchTest;
import stirtide.events.setup.UseHistory;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.events.setup.UseHistory.PastUse;

/** Setups and bookings by chance that a salon could bring, the same for the same seed. */
final class SeededSetups {
    private static final List<String> ZONES =
            List.of("Europe/Lisbon", "Asia/Kathmandu", "America/St_Johns", "Pacific/Auckland");
    private static final List<String> CURRENCIES = List.of("EUR", "JPY", "BHD");

    private final Random random;
    private final LocalDate date;
    private final ZoneId zone;
    private final int priceDecimals;
    private final String currency;

    SeededSetups(long seed) {
        random = new Random(seed);
        date = LocalDate.of(2027, 1, 4).plusDays(random.nextInt(60));
        zone = ZoneId.of(oneOf(ZONES));
        currency = oneOf(CURRENCIES);
        priceDecimals = List.of(2, 0, 3).get(CURRENCIES.indexOf(currency));
    }

    DaySetup setup() {
        List<Developer> developers = some(1, 4, this::developer);
        List<Directions> directions = some(1, 3, this::directions);
        Menu menu = new Menu(some(1, 4, i -> entry(i, directions)), factors(), factors());
        Optional<UseHistory> history = random.nextBoolean() ? Optional.of(history(menu)) : Optional.empty();
        return new DaySetup(date, salon(), developers, directions, menu, history, policy());
    }

    List<Booking> bookings(DaySetup setup) {
        List<Booking> bookings = some(1, setup.salon().chairs(), i -> booking(i, setup));
        bookings.sort(Comparator.comparing(Booking::start)
                .thenComparing(Booking::chair)
                .thenComparing(Booking::bookingUid));
        return bookings;
    }

    private Salon salon() {
        List<Person> people = new ArrayList<>(some(0, 4, i -> person("p" + i, oneOf(List.of(Person.Role.values())))));
        people.add(person("mixer", Person.Role.ASSISTANT));
        return new Salon(
                "salon-" + between(1, 9),
                "Wave \"& Comb\" \u00e9",
                zone.getId(),
                currency,
                between(1, 12),
                between(0, 5),
                between(0, 120),
                people,
                some(1, 3, this::scale),
                some(1, 3, i -> {
                    int usable = between(2, 2_000_000);
                    return new BowlSize("bowl-" + i, usable, between(0, Math.min(200_000, usable - 1)), between(1, 9));
                }),
                maybe(random.nextBoolean()),
                Optional.empty());
    }

    private Person person(String id, Person.Role role) {
        int begin = between(0, 600);
        List<Span> onDuty = new ArrayList<>();
        onDuty.add(span(begin, between(begin + 1, 800)));
        if (random.nextBoolean()) onDuty.add(span(900, random.nextBoolean() ? 1440 : between(901, 1439)));
        return new Person(id, "Name of " + id, role, onDuty);
    }

    private Span span(int fromMinute, int toMinute) {
        var midnight = date.atStartOfDay();
        return new Span(
                midnight.plusMinutes(fromMinute).atZone(zone).toInstant(),
                midnight.plusMinutes(toMinute).atZone(zone).toInstant());
    }

    private Scale scale(int i) {
        return new Scale(
                "scale-" + i,
                Scale.AccuracyClass.II,
                random.nextBoolean(),
                oneOf(List.of(Scale.Weighing.values())),
                between(0, 500),
                List.of(new Scale.Range(between(1000, 600_000), 10, 100), new Scale.Range(1_000_000, 50, 200)));
    }

    private Developer developer(int i) {
        return new Developer(
                "developer-" + i, "Developer " + i, i == 0 ? 1200 : between(1, 1199), grams(), price(), maybe(grams()));
    }

    private Directions directions(int i) {
        return new Directions(
                "lightener-" + i,
                "Lightener " + i,
                oneOf(List.of("powder", "clay", "cream")),
                between(36, 480),
                between(1, 30),
                true,
                some(
                        1,
                        3,
                        j -> new TechniqueRule(
                                "technique-" + j,
                                random.nextBoolean(),
                                between(1, 1500),
                                between(2000, 99_999),
                                between(600, 1200),
                                240)),
                grams(),
                price(),
                maybe(grams()),
                maybe(between(1, 336)),
                maybe(between(1, 336)),
                some(1, 3, j -> "Caution " + j + "."));
    }

    private MenuEntry entry(int i, List<Directions> directions) {
        return new MenuEntry("menu-" + i, "Service " + i, some(1, 3, j -> {
            Directions lightener = oneOf(directions);
            return new MenuZone(
                    "zone " + j,
                    oneOf(lightener.techniques()).technique(),
                    lightener.lightenerId(),
                    between(1, 600),
                    between(1500, 2000),
                    between(1, 500_000),
                    between(1, 60),
                    between(0, 30),
                    between(1, 100),
                    j + 1);
        }));
    }

    private SortedMap<String, Integer> factors() {
        SortedMap<String, Integer> factors = new TreeMap<>();
        for (int i = 0; i < between(1, 4); i++) factors.put("word " + (char) ('a' + i), 500 + 100 * i + between(0, 99));
        return factors;
    }

    private UseHistory history(Menu menu) {
        List<PastVisit> visits = new ArrayList<>();
        List<PastUse> uses = new ArrayList<>();
        for (int i = 0; i < between(0, 4); i++) {
            MenuEntry entry = oneOf(menu.entries());
            LocalDate on = date.minusDays(100L - i);
            List<PastZone> zones = entry.zones().stream().map(this::pastZone).toList();
            visits.add(new PastVisit(on, "C" + i, entry.menuId(), zones));
            if (random.nextBoolean()) continue;
            int length = oneOf(List.copyOf(menu.lengthPermille().values()));
            int density = oneOf(List.copyOf(menu.densityPermille().values()));
            for (int j = 0; j < zones.size(); j++)
                uses.add(new PastUse(
                        on,
                        entry.menuId(),
                        zones.get(j).zone(),
                        "C" + i,
                        entry.zones().get(j).baseMilligrams(),
                        length,
                        density,
                        zones.get(j).usedMilligrams(),
                        false));
        }
        MenuEntry ruled = menu.entries().get(0);
        List<AllowanceRule> rules = random.nextBoolean()
                ? List.of()
                : List.of(new AllowanceRule(
                        ruled.menuId(),
                        ruled.zones().get(0).zone(),
                        Optional.of(between(1, 5_000_000)),
                        maybe(date.minusDays(3))));
        SalonMemory memory = new SalonMemory(
                visits,
                some(
                        0,
                        2,
                        i -> new SwatchTest(date.minusDays(9L - i), "lightener-0", between(1, 9000), 600, 30, 50, 75)),
                some(0, 2, i -> new MixStrip(date.minusDays(9L - i), "lightener-0", 2000, between(1, 1200), 100, 5)),
                maybe(between(500, 995)));
        return new UseHistory(uses, rules, Optional.of(memory));
    }

    private PastZone pastZone(MenuZone zone) {
        int mixed = between(2, 5_000_000);
        return new PastZone(
                zone.zone(),
                zone.technique(),
                zone.lightenerId(),
                between(1, 1200),
                between(1, 99_999),
                mixed,
                between(1, mixed),
                between(1, 240),
                between(0, 240),
                maybe(between(0, 240)),
                maybe(between(10, 100)),
                maybe(between(10, 100)));
    }

    private Optional<AllowancePolicy> policy() {
        return maybe(new AllowancePolicy(
                maybe(between(500, 995)), maybe(price().add(BigDecimal.ONE)), between(1, 500_000), between(0, 36_500)));
    }

    private Booking booking(int i, DaySetup setup) {
        var start = span(between(0, 1439), 1440).from();
        var tests = maybe(new ClientTests(Optional.of(start.minusSeconds(86_400)), maybe(start.minusSeconds(3600))));
        return new Booking(
                "b-" + i,
                oneOf(setup.menu().entries()).menuId(),
                i + 1,
                start,
                oneOf(List.of("", "K.O.", "17")),
                oneOf(List.copyOf(setup.menu().lengthPermille().keySet())),
                oneOf(List.copyOf(setup.menu().densityPermille().keySet())),
                maybe("mixer"),
                between(0, 240),
                oneOf(List.of(0, 15)),
                tests,
                maybe(random.nextBoolean()));
    }

    private BigDecimal price() {
        return BigDecimal.valueOf(between(0, 999_999), priceDecimals);
    }

    private int grams() {
        return between(1, 100_000_000);
    }

    private int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    private <T> T oneOf(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    private <T> Optional<T> maybe(T value) {
        return random.nextBoolean() ? Optional.of(value) : Optional.empty();
    }

    private <T> List<T> some(int least, int most, IntFunction<T> make) {
        return new ArrayList<>(
                IntStream.range(0, between(least, most)).mapToObj(make).toList());
    }
}
