package stirtide.bar.panels.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.SetupRow;
import stirtide.bar.panels.form.ConfirmPanel;
import stirtide.events.command.DayCommand.ChangeSetup;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.SetupPiece;

/** Which form a row opens. */
public final class SetupForms {
    private SetupForms() {}

    /** Changes what stands in a row; a heading of several pieces has nothing to change itself, so it adds one. */
    public static UiEffect change(DaySetup setup, SetupRow row) {
        var salon = setup.salon();
        if (row.isHeading() && row.part().kind().isPresent()) return add(setup, row);
        return switch (row.part()) {
            case SALON -> open(SalonForms.basics(setup));
            case HAIR -> open(SalonForms.hair(setup));
            case PEOPLE -> open(SalonForms.person(setup, salon.person(row.id())));
            case SCALES -> open(SalonForms.scale(setup, salon.scale(row.id())));
            case BOWLS -> open(SalonForms.bowl(setup, salon.bowlSize(row.id())));
            case DEVELOPERS -> open(ProductForms.developer(setup, setup.developer(row.id())));
            case LIGHTENERS ->
                openIfKnown(
                        setup.directions(row.id()),
                        known -> row.within().isPresent()
                                ? ProductForms.technique(known, row.within())
                                : ProductForms.lightener(setup, Optional.of(known)));
            case MENU ->
                openIfKnown(
                        setup.menuEntry(row.id()),
                        known -> row.within().isPresent()
                                ? MenuForms.zone(setup, known, row.within(), 0)
                                : MenuForms.entry(setup, Optional.of(known)));
        };
    }

    /** Adds a piece of the row's part; on a technique or zone, another one of the same piece. */
    public static UiEffect add(DaySetup setup, SetupRow row) {
        if (row.within().isPresent())
            return row.part() == SetupRow.Part.MENU
                    ? openIfKnown(
                            setup.menuEntry(row.id()),
                            known -> MenuForms.zone(
                                    setup, known, Optional.empty(), row.within().get() + 1))
                    : openIfKnown(setup.directions(row.id()), known -> ProductForms.technique(known, Optional.empty()));
        return switch (row.part()) {
            case SALON, HAIR -> change(setup, row);
            case PEOPLE -> open(SalonForms.person(setup, Optional.empty()));
            case SCALES -> open(SalonForms.scale(setup, Optional.empty()));
            case BOWLS -> open(SalonForms.bowl(setup, Optional.empty()));
            case DEVELOPERS -> open(ProductForms.developer(setup, Optional.empty()));
            case LIGHTENERS -> open(ProductForms.lightener(setup, Optional.empty()));
            case MENU -> open(MenuForms.entry(setup, Optional.empty()));
        };
    }

    /** Takes out what stands in a row, which is asked first. */
    public static UiEffect takeOut(DaySetup setup, SetupRow row, long nanos) {
        if (row.part().kind().isEmpty() || row.isHeading())
            return new UiEffect.Notify(
                    "pick what to take out: a person, scale, bowl, product, technique, service or zone");
        Optional<SetupPiece> piece = row.within().isEmpty()
                ? Optional.of(new SetupPiece.TakenOut(row.part().kind().get(), row.id()))
                : less(setup, row, row.within().get());
        if (piece.isEmpty())
            return new UiEffect.Notify("the last one stays: take out the "
                    + (row.part() == SetupRow.Part.MENU ? "service" : "lightener") + " itself");
        String words = row.text().length() > 40 ? row.text().substring(0, 40) : row.text();
        var send = new UiEffect.Send(new ChangeSetup(piece.get()), "taken out: " + words);
        return new UiEffect.Open(new ConfirmPanel("TAKE OUT?", row.text(), send, nanos));
    }

    private static Optional<SetupPiece> less(DaySetup setup, SetupRow row, int place) {
        if (row.part() == SetupRow.Part.MENU)
            return setup.menuEntry(row.id())
                    .filter(one -> one.zones().size() > 1)
                    .map(one -> new SetupPiece.OneMenuEntry(
                            new MenuEntry(one.menuId(), one.name(), without(one.zones(), place))));
        return setup.directions(row.id())
                .filter(one -> one.techniques().size() > 1)
                .map(one -> new SetupPiece.OneLightener(one.withTechniques(without(one.techniques(), place))));
    }

    private static <T> List<T> without(List<T> all, int place) {
        var rest = new ArrayList<>(all);
        rest.remove(place);
        return rest;
    }

    private static UiEffect open(Panel panel) {
        return new UiEffect.Open(panel);
    }

    private static <T> UiEffect openIfKnown(Optional<T> known, Function<T, Panel> form) {
        return known.map(piece -> open(form.apply(piece))).orElse(new UiEffect.Notify("that is not in force any more"));
    }
}
