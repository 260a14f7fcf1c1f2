package stirtide.bar.panels.planner;

import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stirtide.bar.panels.list.InquiryText;
import stirtide.bar.text.CountText;
import stirtide.bar.text.TimeText;
import stirtide.bar.text.WeightText;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.plan.PlanFigures;

/** Advice of the planner as text. */
final class AdviceText {
    private AdviceText() {}

    /** What is shown while the planner works. */
    static String triedSince(long askedNanos, long nowNanos) {
        return "the planner tries it, " + InquiryText.seconds(askedNanos, nowNanos)
                + " s so far; nothing is changed by it";
    }

    /** Moves that improve something: of one service first, then of two, each kind in the planner's order. */
    static List<MoveAdvice.MoveEffect> ranked(MoveAdvice advice) {
        return Stream.concat(advice.singles().stream(), advice.pairs().stream())
                .filter(effect -> effect.improves(advice.present()))
                .toList();
    }

    static String figures(PlanFigures figures) {
        return "clients wait " + figures.waitMinutes() + " min, "
                + WeightText.wholeGrams(figures.notAppliedMilligrams()) + " g left in bowls, "
                + CountText.of(figures.bowlCount(), "bowl");
    }

    /** What was left out on a large day; nothing on any other. */
    static String untried(MoveAdvice advice) {
        if (advice.untried() == 0) return "";
        return CountText.of(advice.untried(), "service") + " not tried, far from who waits: the day is large";
    }

    static String moves(MoveAdvice.MoveEffect effect, ZoneId zone) {
        return effect.moves().stream().map(move -> move(move, zone)).collect(Collectors.joining(", "));
    }

    static String move(MoveAdvice.ServiceMove move, ZoneId zone) {
        return "service " + move.service() + " from " + TimeText.minute(move.from(), zone) + " to "
                + TimeText.minute(move.to(), zone);
    }
}
