package stirtide.bar.panels.setup;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.bar.model.SetupRows;
import stirtide.bar.panels.FormPanel;
import stirtide.bar.panels.FormPanel.Outcome;
import stirtide.events.command.DayCommand.ChangeSetup;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Person;
import stirtide.events.setup.Scale;
import stirtide.events.setup.SetupPiece;

/** Forms of the salon itself, its people, scales, bowls and words of hair. */
final class SalonForms {
    private static final List<String> ROLES = List.of("assistant", "stylist", "colorist", "manager");
    private static final List<String> CLASSES = List.of("I", "II", "III", "IIII");
    private static final List<String> WEIGHINGS = List.of("tare between", "running total");
    private static final List<String> LIMITS = List.of("in service", "initial");

    private SalonForms() {}

    static Outcome send(SetupPiece piece, String words) {
        return new Outcome.Send(new ChangeSetup(piece), words);
    }

    static FormPanel basics(DaySetup setup) {
        var s = setup.salon();
        var specs = List.of(
                SetupFields.name("name", s.name()),
                SetupFields.whole("chairs", "chairs", "" + s.chairs()),
                SetupFields.whole("minutes to hand over", "minutes", "" + s.handOverMinutes()),
                SetupFields.whole("minutes to wash a bowl", "minutes", "" + s.washMinutes()),
                SetupFields.yesNo("one mix for two bowls", s.oneMixTwoBowls().orElse(false)));
        return new FormPanel(
                "SALON  " + s.salonId(),
                specs,
                "zone " + s.zone() + " and currency " + s.currency() + " stay as the day was opened",
                texts -> send(
                        new SetupPiece.Basics(
                                texts.get(0).strip(),
                                Integer.parseInt(texts.get(1)),
                                Integer.parseInt(texts.get(2)),
                                Integer.parseInt(texts.get(3)),
                                Optional.of(texts.get(4).equals("yes"))),
                        "the salon's figures"));
    }

    static FormPanel person(DaySetup setup, Optional<Person> known) {
        ZoneId zone = ZoneId.of(setup.salon().zone());
        var specs = List.of(
                SetupFields.name("name", known.map(Person::name).orElse("")),
                FormPanel.Spec.choice(
                        "role",
                        ROLES,
                        known.map(one -> one.role().name().toLowerCase(Locale.ROOT))
                                .orElse("")),
                SetupFields.hours(
                        "hours today",
                        known.map(one -> SetupRows.hours(one.onDuty(), zone)).orElse("")));
        return new FormPanel("PERSON", specs, "only assistants mix; breaks are left out of the hours", texts -> {
            var hours = SetupFields.spans(texts.get(2), setup.date(), zone);
            if (hours.isEmpty()) return new Outcome.Wrong("hours today takes hours that end after they begin");
            String name = texts.get(0).strip();
            String id = known.map(Person::personId)
                    .orElseGet(() -> SetupFields.id(
                            name,
                            setup.salon().people().stream()
                                    .map(Person::personId)
                                    .toList()));
            var role = Person.Role.valueOf(texts.get(1).toUpperCase(Locale.ROOT));
            return send(new SetupPiece.OnePerson(new Person(id, name, role, hours.get())), "person " + name);
        });
    }

    static FormPanel scale(DaySetup setup, Optional<Scale> known) {
        Optional<Scale.Range> range = known.map(one -> one.ranges().get(0));
        var specs = List.of(
                SetupFields.name("name", known.map(Scale::scaleId).orElse("")),
                FormPanel.Spec.choice(
                        "accuracy class",
                        CLASSES,
                        known.map(one -> one.accuracyClass().name()).orElse("III")),
                SetupFields.grams("shows steps of, g", grams(range.map(Scale.Range::divisionMilligrams))),
                SetupFields.grams("e on its plate, g", grams(range.map(Scale.Range::verificationMilligrams))),
                SetupFields.grams("weighs up to, g", grams(range.map(Scale.Range::maximumMilligrams))),
                SetupFields.grams("weighs from, g", grams(known.map(Scale::minimumMilligrams))),
                FormPanel.Spec.choice(
                        "two parts",
                        WEIGHINGS,
                        known.map(one -> one.weighing()
                                        .name()
                                        .toLowerCase(Locale.ROOT)
                                        .replace('_', ' '))
                                .orElse("")),
                FormPanel.Spec.choice(
                        "error limits",
                        LIMITS,
                        known.map(one -> one.inServiceLimits() ? "in service" : "initial")
                                .orElse("")));
        String note = known.filter(one -> one.ranges().size() > 1).isPresent()
                ? "its first range; the others stay as they are"
                : "class and e stand on the plate of the scale";
        return new FormPanel("SCALE", specs, note, texts -> scale(setup, known, texts));
    }

    private static String grams(Optional<Integer> milligrams) {
        return milligrams.map(one -> SetupRows.plain(one, 3)).orElse("");
    }

    private static Outcome scale(DaySetup setup, Optional<Scale> known, List<String> texts) {
        String id = known.map(Scale::scaleId)
                .orElseGet(() -> SetupFields.id(
                        texts.get(0),
                        setup.salon().scales().stream().map(Scale::scaleId).toList()));
        var ranges = new ArrayList<>(known.map(Scale::ranges).orElse(List.of()));
        var first = new Scale.Range(
                SetupFields.milligrams(texts.get(4)),
                SetupFields.milligrams(texts.get(2)),
                SetupFields.milligrams(texts.get(3)));
        if (ranges.isEmpty()) ranges.add(first);
        else ranges.set(0, first);
        var scale = new Scale(
                id,
                Scale.AccuracyClass.valueOf(texts.get(1)),
                texts.get(7).equals("in service"),
                Scale.Weighing.valueOf(texts.get(6).toUpperCase(Locale.ROOT).replace(' ', '_')),
                SetupFields.milligrams(texts.get(5)),
                ranges);
        return send(new SetupPiece.OneScale(scale), "scale " + id);
    }

    static FormPanel bowl(DaySetup setup, Optional<BowlSize> known) {
        var specs = List.of(
                SetupFields.name("name", known.map(BowlSize::bowlSizeId).orElse("")),
                SetupFields.grams("holds at most, g", grams(known.map(BowlSize::usableMilligrams))),
                SetupFields.grams("sticks to it, g", grams(known.map(BowlSize::residueMilligrams))),
                SetupFields.whole(
                        "how many", "bowls", known.map(one -> "" + one.count()).orElse("")));
        return new FormPanel(
                "SIZE OF BOWL", specs, "non-metal; what sticks to bowl and brush is never applied", texts -> {
                    String id = known.map(BowlSize::bowlSizeId)
                            .orElseGet(() -> SetupFields.id(
                                    texts.get(0),
                                    setup.salon().bowls().stream()
                                            .map(BowlSize::bowlSizeId)
                                            .toList()));
                    var bowl = new BowlSize(
                            id,
                            SetupFields.milligrams(texts.get(1)),
                            SetupFields.milligrams(texts.get(2)),
                            Integer.parseInt(texts.get(3)));
                    return send(new SetupPiece.OneBowlSize(bowl), "size of bowl " + id);
                });
    }

    static FormPanel hair(DaySetup setup) {
        var specs = List.of(
                SetupFields.factors("length", SetupRows.factors(setup.menu().lengthPermille())),
                SetupFields.factors("density", SetupRows.factors(setup.menu().densityPermille())));
        return new FormPanel(
                "HAIR",
                specs,
                "each word multiplies the grams of the menu; 1 leaves them",
                texts -> send(
                        new SetupPiece.HairFactors(
                                SetupFields.permille(texts.get(0)), SetupFields.permille(texts.get(1))),
                        "factors of hair"));
    }
}
