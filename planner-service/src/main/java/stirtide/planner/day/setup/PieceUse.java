package stirtide.planner.day.setup;

import java.util.Optional;
import java.util.stream.Stream;
import stirtide.events.day.Booking;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.SetupPiece;
import stirtide.events.setup.SetupPiece.Kind;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;

/** Whether a piece of the setup is in use, so that it cannot be taken out. */
final class PieceUse {
    private PieceUse() {}

    /** Who uses a piece: a booking, a bowl that was begun, or the plan on show. */
    static Optional<String> of(Day day, SetupPiece.TakenOut out) {
        var booked = day.services().stream()
                .filter(service -> uses(service.booking(), out))
                .map(service -> "service " + service.service());
        var begun = day.bowls().filter(bowl -> uses(bowl, out)).map(bowl -> "bowl " + bowl.bowl());
        var planned = day.plannedBowls().filter(bowl -> uses(bowl, out)).map(bowl -> "bowl " + bowl.bowl());
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
}
