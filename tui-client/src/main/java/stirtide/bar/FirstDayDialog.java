package stirtide.bar;

import java.io.IOException;
import java.net.URI;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import stirtide.bar.client.CommandAnswer;
import stirtide.bar.client.ServiceClient;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.events.setup.Span;

/**
 * Opens the first day of a salon that has nothing yet: asks for the salon and for who sits here, line by line, and leaves
 * all the rest to the setup. Nothing is kept until the service has opened the day.
 */
final class FirstDayDialog {
    private static final String HOURS = "([01]\\d|2[0-3]):[0-5]\\d-([01]\\d|2[0-3]):[0-5]\\d";
    private static final int MOST_CHAIRS = 100;
    /** To begin with, until the salon sets its own: common practice, no source. */
    private static final TreeMap<String, Integer> LENGTHS = factors("short", 750, "medium", 1000, "long", 1350);

    private static final TreeMap<String, Integer> DENSITIES = factors("fine", 850, "medium", 1000, "thick", 1200);
    private static final int HAND_OVER_MINUTES = 2;
    private static final int WASH_MINUTES = 8;

    private final Function<String, Optional<String>> ask;
    private final Consumer<String> tell;

    /**
     * @param ask shows a prompt and gives the line typed, empty when there will be no more
     * @param tell shows a line
     */
    FirstDayDialog(Function<String, Optional<String>> ask, Consumer<String> tell) {
        this.ask = ask;
        this.tell = tell;
    }

    /**
     * A day that was opened.
     *
     * @param day salon id and date
     * @param personId who sits at the terminal
     */
    record Opened(String day, String personId) {}

    /** What was typed; the answers of one try are offered again in the next. */
    private record Answers(
            String name,
            ZoneId zone,
            String currency,
            int chairs,
            LocalDate date,
            String person,
            String role,
            String hours) {}

    private static TreeMap<String, Integer> factors(String a, int x, String b, int y, String c, int z) {
        var map = new TreeMap<String, Integer>();
        map.put(a, x);
        map.put(b, y);
        map.put(c, z);
        return map;
    }

    /** Asks until the service has opened the day; empty when nobody answers any more or the service is away. */
    Optional<Opened> run(URI server, Instant now) throws InterruptedException {
        tell.accept("A salon from nothing. Enter keeps what stands in brackets, Ctrl-C leaves.");
        tell.accept("Nothing is kept before the last answer.");
        Optional<Answers> answers = questions(Optional.empty(), now);
        while (answers.isPresent()) {
            DaySetup setup = setup(answers.get());
            String person = setup.salon().people().get(0).personId();
            String day = setup.salon().salonId() + "/" + setup.date();
            var request =
                    new CommandRequest(UUID.randomUUID().toString(), person, new DayCommand.OpenDay(setup, List.of()));
            try {
                CommandAnswer answer = new ServiceClient(server).open(request);
                if (answer instanceof CommandAnswer.Accepted) return Optional.of(new Opened(day, person));
                if (answer instanceof CommandAnswer.Rejected rejected) tell.accept("not taken: " + rejected.sentence());
                if (answer instanceof CommandAnswer.Undecided undecided)
                    tell.accept("not taken: " + undecided.reason());
            } catch (IOException away) {
                tell.accept("the service cannot be reached at " + server + ": start planner-service/serve first");
                return Optional.empty();
            }
            answers = questions(answers, now);
        }
        return Optional.empty();
    }

    private Optional<Answers> questions(Optional<Answers> before, Instant now) {
        Optional<String> name = line(
                "name of the salon",
                before.map(Answers::name).orElse(""),
                ".*[A-Za-z0-9].*",
                "a name with a letter or digit, up to 80 characters");
        Optional<String> zone = name.flatMap(ok -> until(
                "time zone",
                before.map(one -> one.zone().getId())
                        .orElse(ZoneId.systemDefault().getId()),
                FirstDayDialog::isZone,
                "a name such as Europe/Lisbon"));
        Optional<String> currency = zone.flatMap(ok -> until(
                "currency",
                before.map(Answers::currency).orElse("EUR"),
                FirstDayDialog::isCurrency,
                "an ISO 4217 code such as EUR"));
        Optional<String> chairs = currency.flatMap(ok -> until(
                "chairs",
                before.map(one -> "" + one.chairs()).orElse("4"),
                FirstDayDialog::isChairs,
                "a number from 1 to 100"));
        Optional<String> date = chairs.flatMap(ok -> until(
                "day",
                before.map(one -> one.date().toString())
                        .orElse(now.atZone(ZoneId.of(zone.orElseThrow()))
                                .toLocalDate()
                                .toString()),
                FirstDayDialog::isDate,
                "a day such as 2027-06-11"));
        Optional<String> person = date.flatMap(ok -> line(
                "your name",
                before.map(Answers::person).orElse(""),
                ".*[A-Za-z0-9].*",
                "a name with a letter or digit"));
        Optional<String> role = person.flatMap(ok -> line(
                "your role",
                before.map(Answers::role).orElse("manager"),
                "assistant|stylist|colorist|manager",
                "assistant, stylist, colorist or manager"));
        Optional<String> hours = role.flatMap(ok -> until(
                "your hours today",
                before.map(Answers::hours).orElse("09:00-18:00"),
                FirstDayDialog::isHours,
                "hours such as 09:00-18:00"));
        return hours.map(last -> new Answers(
                name.orElseThrow(),
                ZoneId.of(zone.orElseThrow()),
                currency.orElseThrow(),
                Integer.parseInt(chairs.orElseThrow()),
                LocalDate.parse(date.orElseThrow()),
                person.orElseThrow(),
                role.orElseThrow(),
                last));
    }

    private Optional<String> line(String what, String usual, String pattern, String accepted) {
        return until(what, usual, text -> text.length() <= 80 && text.matches(pattern), accepted);
    }

    private Optional<String> until(String what, String usual, Predicate<String> fits, String accepted) {
        // Ends: when a line fits, or when there are no more lines.
        while (true) {
            Optional<String> typed = ask.apply(what + (usual.isEmpty() ? "" : " [" + usual + "]") + ": ");
            if (typed.isEmpty()) return typed;
            String text = typed.get().strip().isEmpty() ? usual : typed.get().strip();
            if (fits.test(text)) return Optional.of(text);
            tell.accept("  " + what + " takes " + accepted);
        }
    }

    private static boolean isZone(String text) {
        return ZoneId.getAvailableZoneIds().contains(text);
    }

    private static boolean isCurrency(String text) {
        return Currency.getAvailableCurrencies().stream()
                .anyMatch(one -> one.getCurrencyCode().equals(text) && one.getDefaultFractionDigits() >= 0);
    }

    private static boolean isChairs(String text) {
        return text.matches("[1-9]\\d{0,2}") && Integer.parseInt(text) <= MOST_CHAIRS;
    }

    private static boolean isDate(String text) {
        try {
            LocalDate.parse(text);
            return true;
        } catch (DateTimeException none) {
            return false;
        }
    }

    private static boolean isHours(String text) {
        return text.matches(HOURS) && text.substring(0, 5).compareTo(text.substring(6)) < 0;
    }

    private static DaySetup setup(Answers a) {
        var hours = new Span(at(a, a.hours().substring(0, 5)), at(a, a.hours().substring(6)));
        var person = new Person(
                id(a.person()), a.person(), Person.Role.valueOf(a.role().toUpperCase(Locale.ROOT)), List.of(hours));
        var salon = new Salon(
                id(a.name()),
                a.name(),
                a.zone().getId(),
                a.currency(),
                a.chairs(),
                HAND_OVER_MINUTES,
                WASH_MINUTES,
                List.of(person),
                List.of(),
                List.of());
        return new DaySetup(a.date(), salon, List.of(), List.of(), new Menu(List.of(), LENGTHS, DENSITIES));
    }

    private static Instant at(Answers a, String clock) {
        return a.date().atTime(LocalTime.parse(clock)).atZone(a.zone()).toInstant();
    }

    /** Small letters, digits and hyphens, as the files want ids. */
    private static String id(String name) {
        String plain =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        return plain.substring(0, Math.min(40, plain.length()));
    }
}
