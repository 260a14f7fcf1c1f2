package stirtide.demo.folder;

import java.time.ZoneId;
import java.util.List;
import stirtide.demo.Exit;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.plan.MoveAdvice.MoveEffect;
import stirtide.events.plan.PlanFigures;
import stirtide.events.setup.DaySetup;
import stirtide.planner.files.FolderAnswer;
import stirtide.planner.whatif.WhatIf;
import stirtide.planner.whatif.WhatIfAnswer;
import stirtide.planner.whatif.WhatIfQuestion;

/** Prints what moving services within their own tolerance would do. */
final class MovesPage {
    private MovesPage() {}

    /**
     * The page of a folder that was read.
     *
     * @throws Exit with {@link Exit#BAD_INPUT} when the day cannot be opened, and why
     */
    static String of(FolderAnswer.Read read) {
        DaySetup setup = read.setup();
        WhatIfAnswer answer = WhatIf.answer(
                PlannedFolder.day(read),
                new WhatIfQuestion.Moves(),
                setup.date().atStartOfDay(ZoneId.of(setup.salon().zone())).toInstant());
        if (answer instanceof WhatIfAnswer.Refused refused)
            throw new Exit(Exit.BAD_INPUT, refused.refusal().sentence());
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
        return "\nNot tried, as the day is large: " + services + (services == 1 ? " service" : " services")
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
