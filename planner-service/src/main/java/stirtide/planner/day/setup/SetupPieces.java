package stirtide.planner.day.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.events.setup.Scale;
import stirtide.events.setup.SetupPiece;

/** Puts pieces into a setup. What is replaced keeps its place, so that nothing else moves on a screen. */
final class SetupPieces {
    private SetupPieces() {}

    /** The setup with the piece in it; taking out what is not there changes nothing. */
    static DaySetup apply(DaySetup setup, SetupPiece piece) {
        var salon = setup.salon();
        if (piece instanceof SetupPiece.Basics basics) return setup.withSalon(basics(salon, basics));
        if (piece instanceof SetupPiece.OnePerson one)
            return setup.withSalon(salon.withPeople(put(salon.people(), one.person(), Person::personId)));
        if (piece instanceof SetupPiece.OneScale one)
            return setup.withSalon(salon.withScales(put(salon.scales(), one.scale(), Scale::scaleId)));
        if (piece instanceof SetupPiece.OneBowlSize one)
            return setup.withSalon(salon.withBowls(put(salon.bowls(), one.bowlSize(), BowlSize::bowlSizeId)));
        if (piece instanceof SetupPiece.OneDeveloper one)
            return setup.withDevelopers(put(setup.developers(), one.developer(), Developer::developerId));
        if (piece instanceof SetupPiece.OneLightener one)
            return setup.withDirections(put(setup.directions(), one.directions(), Directions::lightenerId));
        var menu = setup.menu();
        if (piece instanceof SetupPiece.OneMenuEntry one)
            return setup.withMenu(menu.withEntries(put(menu.entries(), one.entry(), MenuEntry::menuId)));
        if (piece instanceof SetupPiece.HairFactors factors)
            return setup.withMenu(new Menu(menu.entries(), factors.lengthPermille(), factors.densityPermille()));
        return without(setup, (SetupPiece.TakenOut) piece);
    }

    private static DaySetup without(DaySetup setup, SetupPiece.TakenOut out) {
        var salon = setup.salon();
        var menu = setup.menu();
        return switch (out.kind()) {
            case PERSON -> setup.withSalon(salon.withPeople(less(salon.people(), out.id(), Person::personId)));
            case SCALE -> setup.withSalon(salon.withScales(less(salon.scales(), out.id(), Scale::scaleId)));
            case BOWL_SIZE -> setup.withSalon(salon.withBowls(less(salon.bowls(), out.id(), BowlSize::bowlSizeId)));
            case DEVELOPER -> setup.withDevelopers(less(setup.developers(), out.id(), Developer::developerId));
            case LIGHTENER -> setup.withDirections(less(setup.directions(), out.id(), Directions::lightenerId));
            case MENU_ENTRY -> setup.withMenu(menu.withEntries(less(menu.entries(), out.id(), MenuEntry::menuId)));
        };
    }

    /** Ids of a kind that are there, in their order. */
    static List<String> ids(DaySetup setup, SetupPiece.Kind kind) {
        return switch (kind) {
            case PERSON -> setup.salon().people().stream().map(Person::personId).toList();
            case SCALE -> setup.salon().scales().stream().map(Scale::scaleId).toList();
            case BOWL_SIZE ->
                setup.salon().bowls().stream().map(BowlSize::bowlSizeId).toList();
            case DEVELOPER ->
                setup.developers().stream().map(Developer::developerId).toList();
            case LIGHTENER ->
                setup.directions().stream().map(Directions::lightenerId).toList();
            case MENU_ENTRY ->
                setup.menu().entries().stream().map(MenuEntry::menuId).toList();
        };
    }

    private static <T> List<T> put(List<T> all, T one, Function<T, String> id) {
        var changed = new ArrayList<>(all);
        var known = all.stream().map(id).toList().indexOf(id.apply(one));
        if (known < 0) changed.add(one);
        else changed.set(known, one);
        return changed;
    }

    private static <T> List<T> less(List<T> all, String gone, Function<T, String> id) {
        return all.stream().filter(each -> !id.apply(each).equals(gone)).toList();
    }

    private static Salon basics(Salon salon, SetupPiece.Basics basics) {
        return salon.with(copy -> {
            copy.name(basics.name());
            copy.chairs(basics.chairs());
            copy.handOverMinutes(basics.handOverMinutes());
            copy.washMinutes(basics.washMinutes());
            copy.oneMixTwoBowls(basics.oneMixTwoBowls().or(salon::oneMixTwoBowls));
            copy.mixerCarries(basics.mixerCarries().or(salon::mixerCarries));
        });
    }
}
