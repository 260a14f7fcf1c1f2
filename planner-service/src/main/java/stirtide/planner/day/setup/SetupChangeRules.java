package stirtide.planner.day.setup;

import java.util.List;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Person;
import stirtide.events.setup.SetupPiece;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.CommandRule;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.day.state.ServiceState;

/** Changes of the setup on a running day. What is in use cannot be taken out. */
public final class SetupChangeRules {
    /** A rule for each command of this folder. */
    public static final List<CommandRule<?>> RULES = List.of(
            CommandRule.of(DayCommand.ChangeShift.class, ShiftRules::change),
            CommandRule.of(DayCommand.ChangeSetup.class, SetupChangeRules::change));

    private static final List<Person.Role> MAY_CHANGE = List.of(Person.Role.MANAGER, Person.Role.COLORIST);

    private SetupChangeRules() {}

    /** The setup as it would be; to be held against the rules of the files before the change is asked for. */
    public static DaySetup changed(Day day, SetupPiece piece) {
        return SetupPieces.apply(inForce(day), piece);
    }

    /** The setup with the hours of the day as they are now. */
    public static DaySetup inForce(Day day) {
        var setup = day.opened();
        var people = setup.salon().people().stream()
                .map(one -> new Person(one.personId(), one.name(), one.role(), People.shift(day, one)))
                .toList();
        return setup.withSalon(setup.salon().withPeople(people));
    }

    private static Decision change(Day day, DayCommand.ChangeSetup command, CommandContext context) {
        var piece = command.piece();
        var wrong = right(day, context)
                .or(() -> objection(day, piece))
                .or(() -> SetupRules.objection(SetupPieces.apply(day.opened(), piece))
                        .map(sentence -> new Refusal("SETUP_INVALID", sentence)));
        return Decision.acceptUnless(wrong, () -> new DayEvent.SetupChanged(piece));
    }

    private static Optional<Refusal> right(Day day, CommandContext context) {
        var entitled = day.opened().salon().people().stream()
                .filter(person -> MAY_CHANGE.contains(person.role()))
                .map(Person::personId)
                .toList();
        if (entitled.isEmpty() || entitled.contains(context.actor())) return Optional.empty();
        return Refusal.of(
                "MANAGER_OR_COLORIST_ONLY",
                "What is in force is changed by a manager or colorist. Accepted: " + Refusal.listed(entitled) + ".");
    }

    private static Optional<Refusal> objection(Day day, SetupPiece piece) {
        if (piece instanceof SetupPiece.TakenOut out) return takenOut(day, out);
        if (piece instanceof SetupPiece.OneMenuEntry one) return entry(day, one.entry());
        if (piece instanceof SetupPiece.HairFactors factors) return factors(day, factors);
        if (piece instanceof SetupPiece.OnePerson one)
            return ShiftRules.hoursObjection(day, one.person().onDuty());
        if (piece instanceof SetupPiece.Basics basics) return chairs(day, basics);
        return Optional.empty();
    }

    private static Optional<Refusal> takenOut(Day day, SetupPiece.TakenOut out) {
        var known = SetupPieces.ids(day.opened(), out.kind());
        if (!known.contains(out.id()))
            return Refusal.of(
                    "SETUP_UNKNOWN",
                    "There is no \"" + out.id() + "\" to take out. Accepted: "
                            + (known.isEmpty() ? "nothing, there is none" : Refusal.listed(known)) + ".");
        return PieceUse.of(day, out)
                .flatMap(user -> Refusal.of(
                        "SETUP_IN_USE",
                        "\"" + out.id() + "\" is used by " + user
                                + " on this day and stays. Accepted: taking out what nothing has used."));
    }

    private static Optional<Refusal> entry(Day day, MenuEntry entry) {
        boolean same = day.opened()
                .menuEntry(entry.menuId())
                .filter(old -> old.zones().equals(entry.zones()))
                .isPresent();
        if (same) return Optional.empty();
        return day.services().stream()
                .filter(service -> service.startedAt().isPresent()
                        && service.booking().menuId().equals(entry.menuId()))
                .findFirst()
                .flatMap(service -> Refusal.of(
                        "SETUP_IN_USE",
                        "Service " + service.service() + " was started as \"" + entry.menuId()
                                + "\", so its zones stay as they are today. Accepted: another name for it, or another "
                                + "entry."));
    }

    private static Optional<Refusal> factors(Day day, SetupPiece.HairFactors factors) {
        return day.services().stream()
                .map(ServiceState::booking)
                .filter(booking -> !factors.lengthPermille().containsKey(booking.length())
                        || !factors.densityPermille().containsKey(booking.density()))
                .findFirst()
                .flatMap(booking -> Refusal.of(
                        "SETUP_IN_USE",
                        "Hair \"" + booking.length() + "\" and \"" + booking.density()
                                + "\" is booked on this day. Accepted: lists that hold both words."));
    }

    private static Optional<Refusal> chairs(Day day, SetupPiece.Basics basics) {
        int highest = day.services().stream()
                .mapToInt(service -> service.booking().chair())
                .max()
                .orElse(0);
        return basics.chairs() >= highest
                ? Optional.empty()
                : Refusal.of(
                        "SETUP_IN_USE",
                        "Chair " + highest + " is booked on this day. Accepted: " + highest + " chairs or more.");
    }
}
