package stirtide.bar.panels.services;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.form.ChoiceField;
import stirtide.bar.panels.form.CommandForm;
import stirtide.bar.panels.form.TextField;
import stirtide.events.command.DayCommand;
import stirtide.events.day.ClientTests;
import stirtide.events.plan.PlannedService;
import stirtide.events.view.DayView;

/** Forms about one visit: tests that were done, and the formula of the last time. */
final class VisitForms {
    private static final List<String> TESTS = List.of("strand test", "patch test");
    private static final List<String> FORMULAS = List.of("as last time", "as the menu says");
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private VisitForms() {}

    /** Records when a test was done; what it showed is for a licensed professional to judge. */
    static CommandForm test(DayView.ServiceCard card, UiState state) {
        ZoneId zone = state.zone();
        String today = WHEN.format(state.now().atZone(zone));
        var fields = List.of(
                new ChoiceField("what", TESTS, ""),
                new TextField(
                        "done at",
                        16,
                        "\\d{4}-\\d{2}-\\d{2} \\d{2}:\\d{2}",
                        "a day and a time such as " + today,
                        today));
        return new CommandForm(
                title("TEST DONE", card),
                fields,
                "what it showed, and whether to go on, is for a licensed professional",
                texts -> {
                    Optional<LocalDateTime> at = when(texts.get(1));
                    if (at.isEmpty()) return new UiEffect.Stay("done at takes a day of the calendar, such as " + today);
                    var kind = texts.get(0).equals(TESTS.get(0)) ? ClientTests.Kind.STRAND : ClientTests.Kind.PATCH;
                    return new UiEffect.Send(
                            new DayCommand.RecordTest(
                                    card.service(), kind, at.get().atZone(zone).toInstant()),
                            texts.get(0) + " of service " + card.service() + " recorded");
                });
    }

    private static Optional<LocalDateTime> when(String text) {
        try {
            return Optional.of(LocalDateTime.parse(text.replace(' ', 'T')));
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }

    /** Asks for the formula of the client's last visit, or for the menu's again. */
    static CommandForm formula(DayView.ServiceCard card) {
        return new CommandForm(
                title("FORMULA", card),
                List.of(new ChoiceField("mix", FORMULAS, "")),
                "the planner keeps to the directions and says what it could not repeat",
                texts -> new UiEffect.Send(
                        new DayCommand.RepeatFormula(
                                card.service(), texts.get(0).equals(FORMULAS.get(0))),
                        "service " + card.service() + " mixed " + texts.get(0)));
    }

    /** Records the level of the hair in a zone, before, after, or both. */
    static CommandForm levels(DayView.ServiceCard card) {
        var zones = Stream.concat(
                        card.zonesDone().stream(), card.zones().stream().map(PlannedService.PlannedZone::zone))
                .distinct()
                .toList();
        var fields = List.of(
                new ChoiceField("zone", zones, ""),
                TextField.level("level before", true),
                TextField.level("level after", true));
        return new CommandForm(title("LEVELS", card), fields, "what is left empty stays as it was", texts -> {
            if (texts.get(1).isEmpty() && texts.get(2).isEmpty())
                return new UiEffect.Stay("name the level before, the level after, or both");
            return new UiEffect.Send(
                    new DayCommand.RecordLevels(
                            card.service(), texts.get(0), tenths(texts.get(1)), tenths(texts.get(2))),
                    "level of " + texts.get(0) + " of service " + card.service() + " recorded");
        });
    }

    private static Optional<Integer> tenths(String level) {
        return level.isEmpty()
                ? Optional.empty()
                : Optional.of(new BigDecimal(level.replace(',', '.'))
                        .movePointRight(1)
                        .intValueExact());
    }

    private static String title(String what, DayView.ServiceCard card) {
        return what + "  service " + card.service() + "  chair " + card.chair() + " " + card.clientRef();
    }
}
