package stirtide.demo.folder;

import java.util.List;
import java.util.SortedMap;
import java.util.stream.Collectors;
import stirtide.bar.text.CountText;
import stirtide.demo.print.TextPage;
import stirtide.events.day.Booking;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.plan.MoveAdvice.MoveEffect;
import stirtide.events.plan.PlanFigures;
import stirtide.events.setup.DaySetup;
import stirtide.mixing.text.AmountText;
import stirtide.planner.cli.CommandException;
import stirtide.planner.planning.whatif.WhatIf;
import stirtide.planner.planning.whatif.WhatIfAnswer;
import stirtide.planner.planning.whatif.WhatIfQuestion;
import stirtide.planner.salonfiles.FolderResult;

/** The page of moves: clients worth asking to come at another time within their own tolerance, and what it would do. */
public final class MovesPage {
    private MovesPage() {}

    /**
     * The page of a folder that was read, at most {@value TextPage#COLUMNS} columns wide.
     *
     * @throws CommandException with {@link CommandException#BAD_INPUT} when the day cannot be opened, and why
     */
    public static String of(FolderResult.Read read) {
        DaySetup setup = read.setup();
        WhatIfAnswer answer =
                WhatIf.answer(FolderPlanner.day(read), new WhatIfQuestion.Moves(), FolderPlanner.midnight(setup));
        if (answer instanceof WhatIfAnswer.Refused refused)
            throw new CommandException(
                    CommandException.BAD_INPUT, refused.refusal().sentence());
        return page(
                setup,
                FolderPlanner.numbered(FolderPlanner.open(setup, read.bookings())),
                ((WhatIfAnswer.Moves) answer).advice());
    }

    /** The page of an answer of the planner. */
    static String page(DaySetup setup, SortedMap<Integer, Booking> bookings, MoveAdvice advice) {
        TextPage page = new TextPage();
        page.text("", "Moves worth asking a client for, " + setup.salon().name() + ", " + setup.date());
        page.gap().text("As booked: ", figures(advice.present()) + ".");
        moves(page.gap().line("One move, best first:"), bookings, advice.singles(), advice.present());
        moves(
                page.gap().line("Two moves that do more together, best first:"),
                bookings,
                advice.pairs(),
                advice.present());
        if (advice.untried() > 0)
            page.gap()
                    .text(
                            "",
                            "Not tried, as the day is large: " + CountText.of(advice.untried(), "service")
                                    + " that may move, those farthest from any client who waits.");
        return page.toString();
    }

    private static void moves(
            TextPage page, SortedMap<Integer, Booking> bookings, List<MoveEffect> effects, PlanFigures present) {
        List<MoveEffect> worthAsking =
                effects.stream().filter(effect -> effect.improves(present)).toList();
        if (worthAsking.isEmpty()) page.line("  none");
        for (MoveEffect effect : worthAsking)
            page.text(
                    "  - ",
                    effect.moves().stream()
                                    .map(move -> who(bookings, move.service()))
                                    .collect(Collectors.joining(" and "))
                            + ": " + effect.sentence());
    }

    private static String who(SortedMap<Integer, Booking> bookings, int service) {
        Booking booking = bookings.get(service);
        return booking == null ? "service " + service : booking.clientRef() + " at chair " + booking.chair();
    }

    private static String figures(PlanFigures figures) {
        return CountText.of(figures.waitMinutes(), "minute") + " of waiting, "
                + AmountText.roundedGrams(figures.notAppliedMilligrams()) + " mixed that nobody applies, "
                + CountText.of(figures.busiestMinutes(), "minute") + " of mixing in the busiest half hour, "
                + CountText.of(figures.bowlCount(), "bowl");
    }
}
