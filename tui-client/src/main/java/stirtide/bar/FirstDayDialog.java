package stirtide.bar;

import java.io.IOException;
import java.net.URI;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import stirtide.bar.client.CommandAnswer;
import stirtide.bar.client.ServiceClient;
import stirtide.bar.text.Ids;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.events.setup.Span;

/**
 * Opens the first day of a salon that has nothing yet: asks for the salon and for the person at the terminal, line by line, and leaves
 * all the rest to the setup. Nothing is stored until the service has opened the day.
 */
final class FirstDayDialog {
    private static final String HOURS = "([01]\\d|2[0-3]):[0-5]\\d-([01]\\d|2[0-3]):[0-5]\\d";
    private static final int MOST_CHAIRS = 100;
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_ID = 40;
    /** Place of the time zone among the answers. */
    private static final int ZONE = 1;

    /** To begin with, until the salon sets its own: common practice, no source. */
    private static final TreeMap<String, Integer> LENGTHS =
            new TreeMap<>(Map.of("short", 750, "medium", 1000, "long", 1350));

    private static final TreeMap<String, Integer> DENSITIES =
            new TreeMap<>(Map.of("fine", 850, "medium", 1000, "thick", 1200));
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
     * @param personId person at the terminal
     */
    record Opened(String day, String personId) {}

    /**
     * One question.
     *
     * @param what what is asked for
     * @param usual the answer offered, from the answers before it
     * @param fits whether an answer is accepted
     * @param accepted what is accepted, in words
     */
    private record Question(
            String what, Function<List<String>, String> usual, Predicate<String> fits, String accepted) {}

    /** Asks until the service has opened the day; empty when the input ends or the service cannot be reached. */
    Optional<Opened> run(URI server, Instant now) throws InterruptedException {
        tell.accept("A new salon. Enter takes the value in brackets, Ctrl-C leaves.");
        tell.accept("Nothing is stored before the last answer.");
        Optional<List<String>> answers = ask(List.of(), now);
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
            answers = ask(answers.get(), now);
        }
        return Optional.empty();
    }

    /** Asks all questions, offering the answers of the try before; empty when there are no more lines. */
    private Optional<List<String>> ask(List<String> before, Instant now) {
        var answers = new ArrayList<String>();
        for (Question question : questions(now)) {
            String usual = before.isEmpty() ? question.usual().apply(answers) : before.get(answers.size());
            Optional<String> answer = ask(question, usual);
            if (answer.isEmpty()) return Optional.empty();
            answers.add(answer.get());
        }
        return Optional.of(answers);
    }

    private static List<Question> questions(Instant now) {
        return List.of(
                question(
                        "name of the salon",
                        "",
                        FirstDayDialog::isName,
                        "a name with a letter or digit, up to 80 characters"),
                question(
                        "time zone",
                        ZoneId.systemDefault().getId(),
                        FirstDayDialog::isZone,
                        "a name such as Europe/Lisbon"),
                question("currency", "EUR", FirstDayDialog::isCurrency, "an ISO 4217 code such as EUR"),
                question("chairs", "4", FirstDayDialog::isChairs, "a number from 1 to 100"),
                new Question(
                        "day",
                        answers -> now.atZone(ZoneId.of(answers.get(ZONE)))
                                .toLocalDate()
                                .toString(),
                        FirstDayDialog::isDate,
                        "a day such as 2027-06-11"),
                question("your name", "", FirstDayDialog::isName, "a name with a letter or digit"),
                question(
                        "your role",
                        "manager",
                        text -> text.matches("assistant|stylist|colorist|manager"),
                        "assistant, stylist, colorist or manager"),
                question("your hours today", "09:00-18:00", FirstDayDialog::isHours, "hours such as 09:00-18:00"));
    }

    private static Question question(String what, String usual, Predicate<String> fits, String accepted) {
        return new Question(what, before -> usual, fits, accepted);
    }

    private Optional<String> ask(Question question, String usual) {
        // Ends: when a line fits, or when there are no more lines.
        while (true) {
            Optional<String> typed = ask.apply(question.what() + (usual.isEmpty() ? "" : " [" + usual + "]") + ": ");
            if (typed.isEmpty()) return typed;
            String text = typed.get().strip().isEmpty() ? usual : typed.get().strip();
            if (question.fits().test(text)) return Optional.of(text);
            tell.accept("  " + question.what() + " takes " + question.accepted());
        }
    }

    private static boolean isName(String text) {
        return text.length() <= LONGEST_NAME && text.matches(".*[A-Za-z0-9].*");
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

    private static DaySetup setup(List<String> answers) {
        String name = answers.get(0);
        ZoneId zone = ZoneId.of(answers.get(ZONE));
        LocalDate date = LocalDate.parse(answers.get(4));
        String[] hours = answers.get(7).split("-");
        var onDuty = new Span(at(date, hours[0], zone), at(date, hours[1], zone));
        var person = new Person(
                Ids.of(answers.get(5), LONGEST_ID, List.of()),
                answers.get(5),
                Person.Role.valueOf(answers.get(6).toUpperCase(Locale.ROOT)),
                List.of(onDuty));
        var salon = new Salon(
                Ids.of(name, LONGEST_ID, List.of()),
                name,
                zone.getId(),
                answers.get(2),
                Integer.parseInt(answers.get(3)),
                HAND_OVER_MINUTES,
                WASH_MINUTES,
                List.of(person),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
        return new DaySetup(date, salon, List.of(), List.of(), new Menu(List.of(), LENGTHS, DENSITIES));
    }

    private static Instant at(LocalDate date, String clock, ZoneId zone) {
        return date.atTime(LocalTime.parse(clock)).atZone(zone).toInstant();
    }
}
