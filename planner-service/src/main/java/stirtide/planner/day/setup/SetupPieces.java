package stirtide.planner.day.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.events.setup.Scale;
import stirtide.events.setup.SetupPiece;

/** Puts pieces into a setup. What is replaced keeps its place, so that nothing else moves on a screen. */
public final class SetupPieces {
    private SetupPieces() {}

    /** The setup with the piece in it; taking out what is not there changes nothing. */
    public static DaySetup apply(DaySetup setup, SetupPiece piece) {
        var salon = setup.salon();
        if (piece instanceof SetupPiece.Basics basics) return with(setup, basics(salon, basics));
        if (piece instanceof SetupPiece.OnePerson one)
            return with(setup, people(salon, put(salon.people(), one.person(), Person::personId)));
        if (piece instanceof SetupPiece.OneScale one)
            return with(setup, scales(salon, put(salon.scales(), one.scale(), Scale::scaleId)));
        if (piece instanceof SetupPiece.OneBowlSize one)
            return with(setup, bowls(salon, put(salon.bowls(), one.bowlSize(), BowlSize::bowlSizeId)));
        if (piece instanceof SetupPiece.OneDeveloper one)
            return developers(setup, put(setup.developers(), one.developer(), Developer::developerId));
        if (piece instanceof SetupPiece.OneLightener one)
            return directions(setup, put(setup.directions(), one.directions(), Directions::lightenerId));
        if (piece instanceof SetupPiece.OneMenuEntry one)
            return entries(setup, put(setup.menu().entries(), one.entry(), Menu.MenuEntry::menuId));
        if (piece instanceof SetupPiece.HairFactors factors)
            return menu(setup, new Menu(setup.menu().entries(), factors.lengthPermille(), factors.densityPermille()));
        return without(setup, (SetupPiece.TakenOut) piece);
    }

    private static DaySetup without(DaySetup setup, SetupPiece.TakenOut out) {
        var salon = setup.salon();
        return switch (out.kind()) {
            case PERSON -> with(setup, people(salon, less(salon.people(), out.id(), Person::personId)));
            case SCALE -> with(setup, scales(salon, less(salon.scales(), out.id(), Scale::scaleId)));
            case BOWL_SIZE -> with(setup, bowls(salon, less(salon.bowls(), out.id(), BowlSize::bowlSizeId)));
            case DEVELOPER -> developers(setup, less(setup.developers(), out.id(), Developer::developerId));
            case LIGHTENER -> directions(setup, less(setup.directions(), out.id(), Directions::lightenerId));
            case MENU_ENTRY -> entries(setup, less(setup.menu().entries(), out.id(), Menu.MenuEntry::menuId));
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
                setup.menu().entries().stream().map(Menu.MenuEntry::menuId).toList();
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

    private static Salon basics(Salon s, SetupPiece.Basics b) {
        return new Salon(
                s.salonId(),
                b.name(),
                s.zone(),
                s.currency(),
                b.chairs(),
                b.handOverMinutes(),
                b.washMinutes(),
                s.people(),
                s.scales(),
                s.bowls(),
                b.oneMixTwoBowls().or(s::oneMixTwoBowls));
    }

    static Salon people(Salon s, List<Person> people) {
        return salon(s, people, s.scales(), s.bowls());
    }

    private static Salon scales(Salon s, List<Scale> scales) {
        return salon(s, s.people(), scales, s.bowls());
    }

    private static Salon bowls(Salon s, List<BowlSize> bowls) {
        return salon(s, s.people(), s.scales(), bowls);
    }

    private static Salon salon(Salon s, List<Person> people, List<Scale> scales, List<BowlSize> bowls) {
        return new Salon(
                s.salonId(),
                s.name(),
                s.zone(),
                s.currency(),
                s.chairs(),
                s.handOverMinutes(),
                s.washMinutes(),
                people,
                scales,
                bowls,
                s.oneMixTwoBowls());
    }

    public static DaySetup with(DaySetup s, Salon salon) {
        return new DaySetup(s.date(), salon, s.developers(), s.directions(), s.menu(), s.history(), s.allowances());
    }

    private static DaySetup developers(DaySetup s, List<Developer> developers) {
        return new DaySetup(s.date(), s.salon(), developers, s.directions(), s.menu(), s.history(), s.allowances());
    }

    private static DaySetup directions(DaySetup s, List<Directions> directions) {
        return new DaySetup(s.date(), s.salon(), s.developers(), directions, s.menu(), s.history(), s.allowances());
    }

    private static DaySetup entries(DaySetup s, List<Menu.MenuEntry> entries) {
        return menu(s, new Menu(entries, s.menu().lengthPermille(), s.menu().densityPermille()));
    }

    private static DaySetup menu(DaySetup s, Menu menu) {
        return new DaySetup(s.date(), s.salon(), s.developers(), s.directions(), menu, s.history(), s.allowances());
    }
}
