package stirtide.bar.panels.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import stirtide.bar.model.Panel;
import stirtide.bar.model.SetupRow;
import stirtide.bar.model.UiEffect;
import stirtide.bar.panels.ConfirmPanel;
import stirtide.events.command.DayCommand.ChangeSetup;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.SetupPiece;

/** Which form a row opens. */
public final class SetupForms {
    private SetupForms() {}

    /** Changes what stands in a row; a heading of several pieces has nothing to change itself. */
    public static UiEffect change(DaySetup setup, SetupRow row) {
        var salon = setup.salon();
        if (row.isHeading())
            return switch (row.part()) {
                case SALON -> open(SalonForms.basics(setup));
                case HAIR -> open(SalonForms.hair(setup));
                default -> add(setup, row);
            };
        String id = row.id();
        return switch (row.part()) {
            case PEOPLE ->
                open(SalonForms.person(
                        setup, first(salon.people(), one -> one.personId().equals(id))));
            case SCALES ->
                open(SalonForms.scale(
                        setup, first(salon.scales(), one -> one.scaleId().equals(id))));
            case BOWLS ->
                open(SalonForms.bowl(
                        setup, first(salon.bowls(), one -> one.bowlSizeId().equals(id))));
            case DEVELOPERS ->
                open(ProductForms.developer(
                        setup,
                        first(setup.developers(), one -> one.developerId().equals(id))));
            case LIGHTENERS -> lightener(setup, row);
            case MENU -> entry(setup, row);
            case SALON, HAIR -> new UiEffect.Stay();
        };
    }

    private static UiEffect lightener(DaySetup setup, SetupRow row) {
        Optional<Directions> known = lightener(setup, row.id());
        if (known.isEmpty()) return gone();
        return open(
                row.within().isPresent()
                        ? ProductForms.technique(known.get(), row.within())
                        : ProductForms.lightener(setup, known));
    }

    private static UiEffect entry(DaySetup setup, SetupRow row) {
        Optional<MenuEntry> known = entry(setup, row.id());
        if (known.isEmpty()) return gone();
        return open(
                row.within().isPresent()
                        ? MenuForms.zone(setup, known.get(), row.within(), 0)
                        : MenuForms.entry(setup, known));
    }

    /** Adds a piece of the row's part; on a technique or zone, another one of the same piece. */
    public static UiEffect add(DaySetup setup, SetupRow row) {
        return switch (row.part()) {
            case SALON, HAIR -> change(setup, row);
            case PEOPLE -> open(SalonForms.person(setup, Optional.empty()));
            case SCALES -> open(SalonForms.scale(setup, Optional.empty()));
            case BOWLS -> open(SalonForms.bowl(setup, Optional.empty()));
            case DEVELOPERS -> open(ProductForms.developer(setup, Optional.empty()));
            case LIGHTENERS ->
                row.within().isPresent()
                        ? lightener(setup, row.id())
                                .map(one -> open(ProductForms.technique(one, Optional.empty())))
                                .orElse(gone())
                        : open(ProductForms.lightener(setup, Optional.empty()));
            case MENU ->
                row.within().isPresent()
                        ? entry(setup, row.id())
                                .map(one -> open(MenuForms.zone(
                                        setup,
                                        one,
                                        Optional.empty(),
                                        row.within().get() + 1)))
                                .orElse(gone())
                        : open(MenuForms.entry(setup, Optional.empty()));
        };
    }

    /** Takes out what stands in a row, which is asked first. */
    public static UiEffect takeOut(DaySetup setup, SetupRow row, long nanos) {
        if (row.part().kind().isEmpty() || row.isHeading())
            return new UiEffect.Say(
                    "pick what to take out: a person, scale, bowl, product, technique, service or zone");
        Optional<SetupPiece> piece = row.within().isEmpty()
                ? Optional.of(new SetupPiece.TakenOut(row.part().kind().get(), row.id()))
                : less(setup, row, row.within().get());
        if (piece.isEmpty())
            return new UiEffect.Say("the last one stays: take out the "
                    + (row.part() == SetupRow.Part.MENU ? "service" : "lightener") + " itself");
        String words = row.text().length() > 40 ? row.text().substring(0, 40) : row.text();
        var send = new UiEffect.Send(new ChangeSetup(piece.get()), "taken out: " + words, Optional.empty());
        return new UiEffect.Open(new ConfirmPanel("TAKE OUT?", row.text(), send, nanos));
    }

    private static Optional<SetupPiece> less(DaySetup setup, SetupRow row, int place) {
        if (row.part() == SetupRow.Part.MENU)
            return entry(setup, row.id())
                    .filter(one -> one.zones().size() > 1)
                    .map(one -> new SetupPiece.OneMenuEntry(
                            new MenuEntry(one.menuId(), one.name(), without(one.zones(), place))));
        return lightener(setup, row.id())
                .filter(one -> one.techniques().size() > 1)
                .map(one -> new SetupPiece.OneLightener(ProductForms.with(one, without(one.techniques(), place))));
    }

    private static <T> List<T> without(List<T> all, int place) {
        var rest = new ArrayList<>(all);
        rest.remove(place);
        return rest;
    }

    private static Optional<Directions> lightener(DaySetup setup, String id) {
        return first(setup.directions(), one -> one.lightenerId().equals(id));
    }

    private static Optional<MenuEntry> entry(DaySetup setup, String id) {
        return first(setup.menu().entries(), one -> one.menuId().equals(id));
    }

    private static <T> Optional<T> first(List<T> all, Predicate<T> wanted) {
        return all.stream().filter(wanted).findFirst();
    }

    private static UiEffect open(Panel panel) {
        return new UiEffect.Open(panel);
    }

    private static UiEffect gone() {
        return new UiEffect.Say("that is not in force any more");
    }
}
