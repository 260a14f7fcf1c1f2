package stirtide.planner.planning.bounds;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import stirtide.events.plan.BowlReason;
import stirtide.mixing.text.AmountText;
import stirtide.planner.planning.bounds.FewestBowlsRun.Job;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanText;
import stirtide.planner.planning.search.RelaxedProblem;
import stirtide.planner.planning.stagger.StaggerRun;

/** Reasons for bowls in words. */
final class BowlReasonText {
    /** A stretch with the minutes of mixing it needs and those it gets. */
    record Stretch(int from, int to, int needed, int available) {}

    private final PlanQuestion question;
    private final RelaxedProblem problem;
    private final PlanText words;
    private final boolean mayWait;

    BowlReasonText(PlanQuestion question, RelaxedProblem problem) {
        this.question = question;
        this.problem = problem;
        this.words = new PlanText(question);
        this.mayWait = problem.problem().maxWaitMinutes() > 0;
    }

    Instant at(int minute) {
        return words.at(minute);
    }

    /** Why one run takes several bowls however many people mix. */
    BowlReason alone(int place, String cause, int least) {
        StaggerRun run = problem.problem().runs().get(place);
        RelaxedProblem.Part part = problem.parts().get(place);
        String stretch = "from " + words.time(run.startMinute()) + " to " + words.time(run.endMinute());
        int serves = run.workingLifeMinutes() - run.mixMinutes() - question.handOverMinutes();
        String life = "a bowl lives " + PlanText.minutes(run.workingLifeMinutes()) + ", and "
                + PlanText.minutes(run.workingLifeMinutes() - serves) + " of them are over when it is at the chair";
        String capacity =
                "no bowl has room for more than " + AmountText.roundedGrams(RelaxedProblem.capacity(question));
        String need =
                AmountText.roundedGrams(part.needUpTo().get(part.needUpTo().size() - 1)) + " are needed " + stretch;
        String why = switch (cause) {
            case "WORKING_LIFE" -> "applying lasts " + stretch + ", " + life + ".";
            case "BOWL_SIZE" -> need + ", " + capacity + ".";
            default -> need + ", " + capacity + ", " + life + ".";
        };
        return reason(cause, run.startMinute(), run.endMinute(), part, least, 0, 0, takes(part, least) + ": " + why);
    }

    /** Why a run takes one more: no assistant is free for the bowl that would save it. */
    BowlReason noneFree(int place, Job job, int least) {
        RelaxedProblem.Part part = problem.parts().get(place);
        String sentence = takes(part, least) + " where " + (least - 1) + " would do"
                + (mayWait ? " if clients waited longer" : "") + ": one would have to be mixed from "
                + words.time(job.release()) + " to " + words.time(job.due()) + ", and "
                + absence(job.release(), job.due()) + ".";
        return reason("NOBODY_FREE", job.release(), job.due(), part, least, job.minutes(), 0, sentence);
    }

    private String absence(int from, int to) {
        List<String> busy = new ArrayList<>();
        for (PlanQuestion.Assistant each : question.assistants())
            if (each.busyUntilMinute() > from && each.busyUntilMinute() > question.nowMinute())
                busy.add(each.name() + " is at another bowl until " + words.time(each.busyUntilMinute()));
        if (question.nowMinute() > from) busy.add(0, "nothing can start before " + words.time(question.nowMinute()));
        boolean others = question.assistants().stream()
                .anyMatch(each -> each.busyUntilMinute() <= from
                        && each.onDuty().stream().noneMatch(duty -> duty.from() <= from && to <= duty.to()));
        if (others || busy.isEmpty())
            busy.add("nobody" + (busy.isEmpty() ? "" : " else") + " is on duty long enough then");
        return PlanText.list(busy);
    }

    /** Why one of several services gets one more. */
    BowlReason tooMuch(int extra, Stretch stretch, List<Integer> services, int least) {
        RelaxedProblem.Part part = problem.parts().get(extra);
        String sentence = words.time(stretch.from()) + " to " + words.time(stretch.to()) + " would need "
                + PlanText.minutes(stretch.needed()) + " of mixing if " + named(services)
                + " got" + noMore(services) + "; " + people(stretch.from(), stretch.to()) + " can give "
                + stretch.available() + ". " + oneMore(part);
        return new BowlReason(
                "TOO_MUCH_AT_ONCE",
                at(stretch.from()),
                at(stretch.to()),
                services,
                List.of(),
                least,
                stretch.needed(),
                stretch.available(),
                sentence);
    }

    /** Why one of several services gets one more where no stretch has too few minutes, but none of all orders does. */
    BowlReason noOrder(int extra, int from, int to, List<Integer> services, int least) {
        String sentence =
                "From " + words.time(from) + " to " + words.time(to) + " there is no order of mixing in which "
                        + people(from, to) + " could give " + named(services)
                        + noMore(services) + ": in every one a bowl would be too old or too late. "
                        + oneMore(problem.parts().get(extra));
        return new BowlReason("NO_ORDER_FITS", at(from), at(to), services, List.of(), least, 0, 0, sentence);
    }

    private String people(int from, int to) {
        return PlanText.list(question.assistants().stream()
                .filter(each -> each.onDuty().stream()
                        .anyMatch(duty -> Math.max(duty.from(), each.busyUntilMinute()) < to && from < duty.to()))
                .map(PlanQuestion.Assistant::name)
                .toList());
    }

    private static String named(List<Integer> services) {
        return (services.size() == 1 ? "service " : "services ")
                + PlanText.list(services.stream().map(String::valueOf).toList());
    }

    private static String noMore(List<Integer> services) {
        return " no bowl more than " + (services.size() == 1 ? "it needs" : "each needs") + " alone";
    }

    private String oneMore(RelaxedProblem.Part part) {
        return "So one more bowl cannot be saved without " + (mayWait ? "longer waits" : "a wait") + "; service "
                + part.service() + ", " + PlanText.list(part.zones()) + ", gets one.";
    }

    private static String takes(RelaxedProblem.Part part, int bowls) {
        return "Service " + part.service() + ", " + PlanText.list(part.zones()) + ", takes " + bowls + " bowls";
    }

    private BowlReason reason(
            String cause,
            int from,
            int to,
            RelaxedProblem.Part part,
            int least,
            int needed,
            int available,
            String sentence) {
        return new BowlReason(
                cause, at(from), at(to), List.of(part.service()), part.zones(), least, needed, available, sentence);
    }
}
