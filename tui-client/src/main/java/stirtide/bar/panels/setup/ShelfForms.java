package stirtide.bar.panels.setup;

import java.util.List;
import java.util.Optional;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.SetupRow;
import stirtide.bar.panels.form.ChoiceField;
import stirtide.bar.panels.form.CommandForm;
import stirtide.bar.panels.form.TextField;
import stirtide.events.command.DayCommand;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.mixing.text.AmountText;

/** Forms of what is on the shelf and of the grams planned for a zone. */
public final class ShelfForms {
    private static final List<String> SHELF = List.of("counted on the shelf, g", "packs that came in");
    private static final List<String> ENOUGH = List.of("this often", "as often as the costs say");
    private static final List<String> GRAMS = List.of("plan these grams", "forget pin and what was learned");

    private ShelfForms() {}

    /** Counts a product, or takes in packs of it. */
    public static UiEffect count(DaySetup setup, SetupRow row) {
        boolean product = row.part() == SetupRow.Part.DEVELOPERS || row.part() == SetupRow.Part.LIGHTENERS;
        if (!product || row.isHeading()) return new UiEffect.Notify("pick a developer or a lightener to count");
        String id = row.id();
        String name = name(setup, id);
        var fields = List.of(new ChoiceField("what", SHELF, ""), SetupFields.grams("how much, or how many"));
        return new UiEffect.Open(new CommandForm(
                "SHELF  " + name, fields, "a count replaces what was known; packs are added to it", texts -> {
                    if (texts.get(0).equals(SHELF.get(0)))
                        return new UiEffect.Send(
                                new DayCommand.CountStock(id, FieldValues.milligrams(texts.get(1))),
                                name + " counted, " + texts.get(1) + " g");
                    if (!texts.get(1).matches("\\d{1,4}"))
                        return new UiEffect.Stay("how many takes whole packs, such as 2");
                    return new UiEffect.Send(
                            new DayCommand.ReceiveGoods(id, Integer.parseInt(texts.get(1))),
                            texts.get(1) + " packs of " + name + " came in");
                }));
    }

    /** Sets how often planned grams are to be enough, for all zones that have not begun. For managers. */
    public static UiEffect fraction() {
        var fields = List.of(
                new ChoiceField("what", ENOUGH, ""),
                new TextField(
                        "times in 100",
                        4,
                        "(\\d{1,2}([.,]\\d)?)?",
                        "50 to 99.5 with at most one decimal, such as 80; nothing when the costs are to say",
                        ""));
        String note = "rarer: less over-mix, more bowls that run short; managers only";
        return new UiEffect.Open(new CommandForm("ENOUGH  how often planned grams are", fields, note, texts -> {
            if (texts.get(0).equals(ENOUGH.get(1)))
                return new UiEffect.Send(
                        new DayCommand.SetAllowanceFraction(Optional.empty()),
                        "the costs say how often grams are enough");
            if (texts.get(1).isEmpty()) return new UiEffect.Stay("times in 100 takes 50 to 99.5, such as 80");
            int permille = FieldValues.tenths(texts.get(1));
            return new UiEffect.Send(
                    new DayCommand.SetAllowanceFraction(Optional.of(permille)),
                    "grams are to be enough " + texts.get(1) + " times in 100");
        }));
    }

    private static String name(DaySetup setup, String id) {
        return setup.developer(id)
                .map(Developer::name)
                .or(() -> setup.directions(id).map(Directions::name))
                .orElse(id);
    }

    /** Pins the grams planned for a zone of medium hair, or lets them be learned again. For managers. */
    public static UiEffect pin(DaySetup setup, SetupRow row) {
        var entry = setup.menuEntry(row.id());
        if (row.part() != SetupRow.Part.MENU || row.within().isEmpty() || entry.isEmpty())
            return new UiEffect.Notify("pick a zone of the menu to pin its grams");
        var zone = entry.get().zones().get(row.within().get());
        var fields = List.of(
                new ChoiceField("what", GRAMS, ""),
                new TextField(
                        "grams",
                        8,
                        "(\\d{1,4}([.,]\\d{1,3})?)?",
                        "grams to plan, such as 40; nothing when they are to be learned again",
                        ""));
        String note = "the menu says " + AmountText.number(zone.baseMilligrams(), 3) + " g; managers only";
        return new UiEffect.Open(new CommandForm(
                "GRAMS of " + zone.zone() + ", " + entry.get().name(), fields, note, texts -> {
                    if (texts.get(0).equals(GRAMS.get(1)))
                        return new UiEffect.Send(
                                new DayCommand.ResetAllowance(row.id(), zone.zone()),
                                zone.zone() + " is learned again");
                    if (texts.get(1).isEmpty()) return new UiEffect.Stay("grams takes grams to plan, such as 40");
                    return new UiEffect.Send(
                            new DayCommand.PinAllowance(row.id(), zone.zone(), FieldValues.milligrams(texts.get(1))),
                            zone.zone() + " pinned at " + texts.get(1) + " g");
                }));
    }
}
