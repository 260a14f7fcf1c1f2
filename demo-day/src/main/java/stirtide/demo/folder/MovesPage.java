package stirtide.demo.folder;

import java.util.List;
import stirtide.bar.text.CountText;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.plan.MoveAdvice.MoveEffect;
import stirtide.events.plan.PlanFigures;
import stirtide.events.setup.DaySetup;
import stirtide.planner.cli.CommandException;
import stirtide.planner.planning.whatif.WhatIf;
import stirtide.planner.planning.whatif.WhatIfAnswer;
import stirtide.planner.planning.whatif.WhatIfQuestion;
import stirtide.planner.salonfiles.FolderResult;

/** The page of moves: the effect of moving services within their own tolerance. */
public final class MovesPage {
    private MovesPage() {}

    /**
     * The page of a folder that was read.
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
        return page(setup, ((WhatIfAnswer.Moves) answer).advice());
    }

    private static String page(DaySetup setup, MoveAdvice advice) {
        return "What a move would do, " + setup.salon().name() + ", " + setup.date() + "\n\n"
                + "As booked: " + figures(advice.present()) + ".\n\n"
                + "One move, best first:\n" + lines(advice.singles())
                + "\nTwo moves that do more together, best first:\n" + lines(advice.pairs())
                + untried(advice.untried());
    }

    private static String untried(int services) {
        if (services == 0) return "";
        return "\nNot tried, as the day is large: " + CountText.of(services, "service")
                + " that may move, those farthest from any client who waits.\n";
    }

    private static String figures(PlanFigures figures) {
        int tenths = (figures.notAppliedMilligrams() + 50) / 100;
        return figures.waitMinutes() + " minutes of waiting, " + tenths / 10 + "." + tenths % 10
                + " g mixed that nobody applies, " + figures.busiestMinutes()
                + " minutes of mixing in the busiest half hour, " + figures.bowlCount() + " bowls";
    }

    private static String lines(List<MoveEffect> effects) {
        if (effects.isEmpty()) return "  none\n";
        StringBuilder lines = new StringBuilder();
        for (MoveEffect effect : effects)
            lines.append("  ").append(effect.sentence()).append('\n');
        return lines.toString();
    }
}
