package stirtide.bar.panels.setup;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.panels.form.ChoiceField;
import stirtide.bar.panels.form.CommandForm;
import stirtide.bar.panels.form.FormField;
import stirtide.bar.panels.form.TextField;
import stirtide.events.command.DayCommand;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.SwatchTest;
import stirtide.events.view.SwatchView;

/** Forms of a test mix: a swatch that was judged, a pH strip that was read. */
final class TestMixForms {
    private final List<SwatchView.LightenerCard> lighteners;
    private final LocalDate today;
    private final UiEffect after;

    /** Forms for the lighteners of a view; {@code after} is what follows once a record is accepted. */
    TestMixForms(SwatchView view, LocalDate today, UiEffect after) {
        lighteners = view.lighteners();
        this.today = today;
        this.after = after;
    }

    CommandForm swatch() {
        return form(
                "TEST SWATCH",
                List.of(
                        new TextField("minutes to the rinse", 3, "[1-9]\\d{0,2}", "whole minutes, such as 30", ""),
                        TextField.level("level before", false),
                        TextField.level("level after", false)),
                "hair off the head: it shows this mix only, nothing about a client",
                mix -> new DayCommand.RecordSwatch(new SwatchTest(
                        mix.on(),
                        mix.lightenerId(),
                        mix.ratio(),
                        mix.strength(),
                        Integer.parseInt(mix.own().get(0)),
                        FieldValues.tenths(mix.own().get(1)),
                        FieldValues.tenths(mix.own().get(2)))));
    }

    CommandForm strip() {
        return form(
                "PH STRIP",
                List.of(
                        new TextField("pH read", 4, "\\d{1,2}([.,]\\d)?", "a pH of 0 to 14, such as 9.5", ""),
                        new TextField(
                                "step of the chart",
                                3,
                                "\\d([.,]\\d)?",
                                "how far the fields of the chart are apart, such as 0.5",
                                "")),
                "a strip compares how alkaline two mixes are, and shows nothing else",
                mix -> new DayCommand.RecordStrip(new MixStrip(
                        mix.on(),
                        mix.lightenerId(),
                        mix.ratio(),
                        mix.strength(),
                        FieldValues.tenths(mix.own().get(0)),
                        FieldValues.tenths(mix.own().get(1)))));
    }

    /** What both have in front, and the texts of their own fields. */
    private record Mix(LocalDate on, String lightenerId, int ratio, int strength, List<String> own) {}

    private CommandForm form(
            String title, List<? extends FormField> own, String note, Function<Mix, DayCommand> command) {
        var fields = new ArrayList<FormField>();
        var names = lighteners.stream().map(SwatchView.LightenerCard::name).toList();
        fields.add(new ChoiceField("lightener", names, ""));
        fields.add(SetupFields.ratio("ratio as weighed", ""));
        fields.add(SetupFields.percent("developer, per cent"));
        fields.addAll(own);
        fields.add(new TextField("done on", 10, "\\d{4}-\\d{2}-\\d{2}", "a day such as " + today, today.toString()));
        return new CommandForm(
                title,
                fields,
                note,
                texts -> date(texts.get(texts.size() - 1))
                        .<UiEffect>map(on -> new UiEffect.Send(
                                command.apply(new Mix(
                                        on,
                                        lighteners
                                                .get(names.indexOf(texts.get(0)))
                                                .lightenerId(),
                                        FieldValues.thousandths(texts.get(1)),
                                        FieldValues.hundredths(texts.get(2)),
                                        texts.subList(3, texts.size() - 1))),
                                title.toLowerCase(Locale.ROOT) + " of " + texts.get(0) + " recorded"))
                        .orElse(new UiEffect.Stay("done on takes a day of the calendar, such as " + today)),
                after);
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }
}
