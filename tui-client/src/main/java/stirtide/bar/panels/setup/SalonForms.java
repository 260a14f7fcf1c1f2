package stirtide.bar.panels.setup;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.SetupRows;
import stirtide.bar.panels.form.CommandForm;
import stirtide.bar.text.CodeText;
import stirtide.bar.text.Ids;
import stirtide.events.command.DayCommand.ChangeSetup;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.events.setup.Scale;
import stirtide.events.setup.SetupPiece;

/** Forms of the salon itself, its people, scales, bowls and words of hair. */
final class SalonForms {
    private static final List<String> ROLES = List.of("assistant", "stylist", "colorist", "manager");
    private static final List<String> CLASSES = List.of("I", "II", "III", "IIII");
    private static final List<String> WEIGHINGS = List.of("tare between", "running total");
    private static final List<String> LIMITS = List.of("in service", "initial");

    private SalonForms() {}

    static UiEffect send(SetupPiece piece, String words) {
        return new UiEffect.Send(new ChangeSetup(piece), words);
    }

    /** The id of a piece that is changed, or a new one made of its name. */
    private static <T> String id(Optional<T> known, Function<T, String> id, String name, List<T> pieces) {
        return known.map(id)
                .orElseGet(() -> Ids.of(name, pieces.stream().map(id).toList()));
    }

    static CommandForm basics(DaySetup setup) {
        var salon = setup.salon();
        var known = Optional.of(salon);
        var fields = List.of(
                SetupFields.name(known, Salon::name),
                SetupFields.whole("chairs", "chairs", known, Salon::chairs),
                SetupFields.whole("minutes to hand over", "minutes", known, Salon::handOverMinutes),
                SetupFields.whole("minutes to wash a bowl", "minutes", known, Salon::washMinutes),
                SetupFields.yesNo("one mix for two bowls", salon.oneMixTwoBowls(), yes -> yes),
                SetupFields.yesNo("who mixes carries", known, Salon::carriedByMixer));
        String note = "zone " + salon.zone() + " and currency " + salon.currency() + " stay as the day was opened";
        return new CommandForm("SALON  " + salon.salonId(), fields, note, texts -> {
            var basics = new SetupPiece.Basics(
                    texts.get(0).strip(),
                    Integer.parseInt(texts.get(1)),
                    Integer.parseInt(texts.get(2)),
                    Integer.parseInt(texts.get(3)),
                    Optional.of(texts.get(4).equals("yes")),
                    Optional.of(texts.get(5).equals("yes")));
            return send(basics, "the salon's figures");
        });
    }

    static CommandForm person(DaySetup setup, Optional<Person> known) {
        ZoneId zone = ZoneId.of(setup.salon().zone());
        String hoursToday =
                known.map(one -> SetupRows.hours(one.onDuty(), zone)).orElse("");
        var fields = List.of(
                SetupFields.name(known, Person::name),
                SetupFields.choice(
                        "role", ROLES, known, one -> CodeText.words(one.role().name())),
                SetupFields.hours("hours today", hoursToday));
        return new CommandForm("PERSON", fields, "only assistants mix; breaks are left out of the hours", texts -> {
            var hours = FieldValues.spans(texts.get(2), setup.date(), zone);
            if (hours.isEmpty()) return new UiEffect.Stay("hours today takes hours that end after they begin");
            String name = texts.get(0).strip();
            String id = id(known, Person::personId, name, setup.salon().people());
            var role = Person.Role.valueOf(texts.get(1).toUpperCase(Locale.ROOT));
            String words = hours.get().isEmpty() ? name + " is off today" : "person " + name;
            return send(new SetupPiece.OnePerson(new Person(id, name, role, hours.get())), words);
        });
    }

    static CommandForm scale(DaySetup setup, Optional<Scale> known) {
        Optional<Scale.Range> range = known.map(one -> one.ranges().get(0));
        String accuracy = known.map(one -> one.accuracyClass().name()).orElse("III");
        var fields = List.of(
                SetupFields.name(known, Scale::scaleId),
                SetupFields.choice("accuracy class", CLASSES, Optional.of(accuracy), one -> one),
                SetupFields.grams("shows steps of, g", range, Scale.Range::divisionMilligrams),
                SetupFields.grams("small e on type plate, g", range, Scale.Range::verificationMilligrams),
                SetupFields.grams("weighs up to, g", range, Scale.Range::maximumMilligrams),
                SetupFields.grams("weighs from, g", known, Scale::minimumMilligrams),
                SetupFields.choice(
                        "two parts",
                        WEIGHINGS,
                        known,
                        one -> CodeText.words(one.weighing().name())),
                SetupFields.choice(
                        "error limits", LIMITS, known, one -> one.inServiceLimits() ? "in service" : "initial"));
        String note = known.filter(one -> one.ranges().size() > 1).isPresent()
                ? "its first range; the others stay as they are"
                : "class (III) and small e stand on the type plate";
        return new CommandForm("SCALE", fields, note, texts -> scale(setup, known, texts));
    }

    private static UiEffect scale(DaySetup setup, Optional<Scale> known, List<String> texts) {
        String id = id(known, Scale::scaleId, texts.get(0), setup.salon().scales());
        var ranges = new ArrayList<>(known.map(Scale::ranges).orElse(List.of()));
        var first = new Scale.Range(
                FieldValues.milligrams(texts.get(4)),
                FieldValues.milligrams(texts.get(2)),
                FieldValues.milligrams(texts.get(3)));
        if (ranges.isEmpty()) ranges.add(first);
        else ranges.set(0, first);
        var scale = new Scale(
                id,
                Scale.AccuracyClass.valueOf(texts.get(1)),
                texts.get(7).equals("in service"),
                Scale.Weighing.valueOf(texts.get(6).toUpperCase(Locale.ROOT).replace(' ', '_')),
                FieldValues.milligrams(texts.get(5)),
                ranges);
        return send(new SetupPiece.OneScale(scale), "scale " + id);
    }

    static CommandForm bowl(DaySetup setup, Optional<BowlSize> known) {
        var fields = List.of(
                SetupFields.name(known, BowlSize::bowlSizeId),
                SetupFields.grams("holds at most, g", known, BowlSize::usableMilligrams),
                SetupFields.grams("sticks to it, g", known, BowlSize::residueMilligrams),
                SetupFields.whole("how many", "bowls", known, BowlSize::count));
        String note = "non-metal; what sticks to bowl and brush is never applied";
        return new CommandForm("SIZE OF BOWL", fields, note, texts -> {
            String id =
                    id(known, BowlSize::bowlSizeId, texts.get(0), setup.salon().bowls());
            var bowl = new BowlSize(
                    id,
                    FieldValues.milligrams(texts.get(1)),
                    FieldValues.milligrams(texts.get(2)),
                    Integer.parseInt(texts.get(3)));
            return send(new SetupPiece.OneBowlSize(bowl), "size of bowl " + id);
        });
    }

    static CommandForm hair(DaySetup setup) {
        var fields = List.of(
                SetupFields.factors("length", SetupRows.factors(setup.menu().lengthPermille())),
                SetupFields.factors("density", SetupRows.factors(setup.menu().densityPermille())));
        String note = "each word multiplies the grams of the menu; 1 leaves them";
        return new CommandForm("HAIR", fields, note, texts -> {
            var factors =
                    new SetupPiece.HairFactors(FieldValues.permille(texts.get(0)), FieldValues.permille(texts.get(1)));
            return send(factors, "factors of hair");
        });
    }
}
