package stirtide.bar.panels.setup;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import stirtide.bar.panels.FormPanel;
import stirtide.bar.panels.FormPanel.Outcome;
import stirtide.bar.panels.FormPanel.Spec;
import stirtide.events.command.DayCommand;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.SwatchTest;
import stirtide.events.view.SwatchView;

/** Forms of a test mix: a swatch that was judged, a pH strip that was read. */
final class TestMixForms {
    private final List<SwatchView.LightenerCard> lighteners;
    private final LocalDate today;

    TestMixForms(SwatchView view, LocalDate today) {
        this.lighteners = view.lighteners();
        this.today = today;
    }

    FormPanel swatch() {
        return form(
                "TEST SWATCH",
                List.of(
                        Spec.text("minutes to the rinse", 3, "[1-9]\\d{0,2}", "whole minutes, such as 30", ""),
                        Spec.level("level before", false),
                        Spec.level("level after", false)),
                "hair off the head: it tells of this mix, nothing of a client",
                mix -> new DayCommand.RecordSwatch(new SwatchTest(
                        mix.on(),
                        mix.lightenerId(),
                        mix.ratio(),
                        mix.strength(),
                        Integer.parseInt(mix.own().get(0)),
                        SetupFields.tenths(mix.own().get(1)),
                        SetupFields.tenths(mix.own().get(2)))));
    }

    FormPanel strip() {
        return form(
                "PH STRIP",
                List.of(
                        Spec.text("pH read", 4, "\\d{1,2}([.,]\\d)?", "a pH of 0 to 14, such as 9.5", ""),
                        Spec.text(
                                "step of the chart",
                                3,
                                "\\d([.,]\\d)?",
                                "how far the fields of the chart are apart, such as 0.5",
                                "")),
                "a strip compares how alkaline two mixes are, and tells nothing else",
                mix -> new DayCommand.RecordStrip(new MixStrip(
                        mix.on(),
                        mix.lightenerId(),
                        mix.ratio(),
                        mix.strength(),
                        SetupFields.tenths(mix.own().get(0)),
                        SetupFields.tenths(mix.own().get(1)))));
    }

    /** What both have in front, and the texts of their own fields. */
    private record Mix(LocalDate on, String lightenerId, int ratio, int strength, List<String> own) {}

    private FormPanel form(String title, List<Spec> own, String note, Function<Mix, DayCommand> command) {
        var specs = new ArrayList<Spec>();
        var names = lighteners.stream().map(SwatchView.LightenerCard::name).toList();
        specs.add(Spec.choice("lightener", names, ""));
        specs.add(SetupFields.ratio("ratio as weighed", ""));
        specs.add(SetupFields.percent("developer, per cent", ""));
        specs.addAll(own);
        specs.add(Spec.text("done on", 10, "\\d{4}-\\d{2}-\\d{2}", "a day such as " + today, today.toString()));
        return new FormPanel(
                title,
                specs,
                note,
                texts -> date(texts.get(texts.size() - 1))
                        .<Outcome>map(on -> new Outcome.Send(
                                command.apply(new Mix(
                                        on,
                                        lighteners
                                                .get(names.indexOf(texts.get(0)))
                                                .lightenerId(),
                                        SetupFields.thousandths(texts.get(1)),
                                        SetupFields.hundredths(texts.get(2)),
                                        texts.subList(3, texts.size() - 1))),
                                title.toLowerCase(Locale.ROOT) + " of " + texts.get(0) + " recorded"))
                        .orElse(new Outcome.Wrong("done on takes a day of the calendar, such as " + today)),
                TestMixPanel.ask());
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }
}
