package stirtide.planner.day.setup;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.day.DayEvent;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Person;
import stirtide.events.setup.SetupPiece;
import stirtide.events.setup.SetupPiece.Kind;
import stirtide.planner.day.booking.BookingRules;
import stirtide.planner.day.state.Bookings;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.day.state.ServiceState;

/** Changes of what is in force on a running day. What is in use is not pulled from under anybody's hands. */
public final class SetupChangeRules {
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
        return SetupPieces.with(setup, SetupPieces.people(setup.salon(), people));
    }

    public static Decision change(Day day, DayCommand.ChangeSetup command, CommandContext facts) {
        var piece = command.piece();
        return right(day, facts)
                .or(() -> objection(day, piece))
                .or(() -> SetupRules.objection(SetupPieces.apply(day.opened(), piece))
                        .map(sentence -> new Refusal("SETUP_INVALID", sentence)))
                .<Decision>map(Decision.Refused::new)
                .orElseGet(() -> Decision.accept(new DayEvent.SetupChanged(piece)));
    }

    private static Optional<Refusal> right(Day day, CommandContext facts) {
        var entitled = day.opened().salon().people().stream()
                .filter(person -> MAY_CHANGE.contains(person.role()))
                .map(Person::personId)
                .toList();
        if (entitled.isEmpty() || entitled.contains(facts.actor())) return Optional.empty();
        return refusal(
                "MANAGER_OR_COLORIST_ONLY",
                "What is in force is changed by a manager or colorist. Accepted: " + BookingRules.listed(entitled)
                        + ".");
    }

    private static Optional<Refusal> objection(Day day, SetupPiece piece) {
        if (piece instanceof SetupPiece.TakenOut out) return takenOut(day, out);
        if (piece instanceof SetupPiece.OneMenuEntry one) return entry(day, one.entry());
        if (piece instanceof SetupPiece.HairFactors factors) return factors(day, factors);
        if (piece instanceof SetupPiece.OnePerson one)
            return People.hoursObjection(day, one.person().onDuty());
        if (piece instanceof SetupPiece.Basics basics) return chairs(day, basics);
        return Optional.empty();
    }

    private static Optional<Refusal> takenOut(Day day, SetupPiece.TakenOut out) {
        var known = SetupPieces.ids(day.opened(), out.kind());
        if (!known.contains(out.id()))
            return refusal(
                    "SETUP_UNKNOWN",
                    "There is no \"" + out.id() + "\" to take out. Accepted: "
                            + (known.isEmpty() ? "nothing, there is none" : BookingRules.listed(known)) + ".");
        return user(day, out)
                .flatMap(user -> refusal(
                        "SETUP_IN_USE",
                        "\"" + out.id() + "\" is used by " + user
                                + " on this day and stays. Accepted: taking out what nothing has used."));
    }

    /** Who uses a piece: a booking, a bowl that was begun, or the plan on show. */
    private static Optional<String> user(Day day, SetupPiece.TakenOut out) {
        var booked = day.services().stream()
                .filter(service -> uses(service.booking(), out))
                .map(service -> "service " + service.service());
        var begun = day.services().stream()
                .flatMap(service -> service.bowls().stream())
                .filter(bowl -> uses(bowl, out))
                .map(bowl -> "bowl " + bowl.bowl());
        var planned = day.plan().stream()
                .flatMap(plan -> plan.bowls().stream())
                .filter(bowl -> uses(bowl, out))
                .map(bowl -> "bowl " + bowl.bowl());
        return Stream.of(booked, begun, planned).flatMap(each -> each).findFirst();
    }

    private static boolean uses(Booking booking, SetupPiece.TakenOut out) {
        if (out.kind() == Kind.MENU_ENTRY) return booking.menuId().equals(out.id());
        return out.kind() == Kind.PERSON
                && booking.stylistId().filter(out.id()::equals).isPresent();
    }

    private static boolean uses(BowlState bowl, SetupPiece.TakenOut out) {
        return switch (out.kind()) {
            case PERSON -> bowl.personId().equals(out.id());
            case SCALE -> bowl.scaleId().equals(out.id());
            case BOWL_SIZE -> bowl.bowlSizeId().equals(out.id());
            default ->
                holds(bowl.planned(), out.id())
                        || bowl.weighed().stream()
                                .flatMap(weighed -> weighed.developerParts().stream())
                                .anyMatch(part -> part.developerId().equals(out.id()));
        };
    }

    private static boolean uses(PlannedBowl bowl, SetupPiece.TakenOut out) {
        return switch (out.kind()) {
            case PERSON -> bowl.personId().filter(out.id()::equals).isPresent();
            case SCALE -> bowl.scaleId().equals(out.id());
            case BOWL_SIZE -> bowl.bowlSizeId().equals(out.id());
            default -> holds(bowl.formula(), out.id());
        };
    }

    private static boolean holds(BowlFormula formula, String productId) {
        return formula.lightenerId().equals(productId)
                || formula.developerParts().stream()
                        .map(DeveloperPart::developerId)
                        .anyMatch(productId::equals);
    }

    private static Optional<Refusal> entry(Day day, MenuEntry entry) {
        boolean same = Bookings.entry(day.opened(), entry.menuId())
                .filter(old -> old.zones().equals(entry.zones()))
                .isPresent();
        if (same) return Optional.empty();
        return day.services().stream()
                .filter(service -> service.startedAt().isPresent()
                        && service.booking().menuId().equals(entry.menuId()))
                .findFirst()
                .flatMap(service -> refusal(
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
                .flatMap(booking -> refusal(
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
                : refusal(
                        "SETUP_IN_USE",
                        "Chair " + highest + " is booked on this day. Accepted: " + highest + " chairs or more.");
    }

    private static Optional<Refusal> refusal(String code, String sentence) {
        return Optional.of(new Refusal(code, sentence));
    }
}
