package stirtide.planner.check.stagger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stirtide.planner.planning.stagger.BowlRule;
import stirtide.planner.planning.stagger.StaggerMix;
import stirtide.planner.planning.stagger.StaggerPlan;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;
import stirtide.planner.planning.stagger.StaggerScore;

/** Holds a plan against the rules of its problem, one by one. */
public final class StaggerPlanCheck {
    private final StaggerProblem problem;
    private final List<String> faults = new ArrayList<>();

    private StaggerPlanCheck(StaggerProblem problem) {
        this.problem = problem;
    }

    /** Every rule that the plan breaks, in words; empty if it keeps them all and its score is the one it states. */
    public static List<String> faults(StaggerProblem problem, StaggerPlan plan) {
        StaggerPlanCheck check = new StaggerPlanCheck(problem);
        for (int r = 0; r < problem.runs().size(); r++) {
            check.run(r, plan.mixes());
        }
        for (int a = 0; a < problem.assistants().size(); a++) {
            check.person(a, plan.mixes());
        }
        check.scales(plan.mixes());
        StaggerScore is = score(problem, plan.mixes());
        if (!is.equals(plan.score())) {
            check.faults.add("the plan states " + plan.score() + " but is " + is);
        }
        return List.copyOf(check.faults);
    }

    /** What the bowls add up to on each level. */
    public static StaggerScore score(StaggerProblem problem, List<StaggerMix> mixes) {
        long lastResorts = 0;
        long wait = 0;
        long cost = 0;
        long age = 0;
        for (StaggerMix mix : mixes) {
            StaggerRun run = problem.runs().get(mix.runIndex());
            cost += run.bowls().cost(RunTimes.placeOf(run, mix.fromMinute()), RunTimes.fedBy(run, mix.toMinute()));
            if (mix.assistant() == StaggerMix.STYLIST) {
                lastResorts++;
                age += mix.fromMinute() - mix.mixStartMinute();
            } else {
                int ready = mix.mixStartMinute() + run.mixMinutes() + problem.handOverMinutes();
                wait += Math.max(0, ready - mix.fromMinute());
                age += Math.max(ready, mix.fromMinute()) - mix.mixStartMinute();
            }
        }
        return new StaggerScore(lastResorts, wait, cost, age);
    }

    private void run(int r, List<StaggerMix> mixes) {
        StaggerRun run = problem.runs().get(r);
        List<StaggerMix> own = mixes.stream()
                .filter(mix -> mix.runIndex() == r)
                .sorted(Comparator.comparingInt(StaggerMix::fromMinute))
                .toList();
        int fed = 0;
        for (StaggerMix mix : own) {
            boolean follows = fed < run.minutes() && mix.fromMinute() == run.useOf(fed);
            expect(follows, run, "gap or overlap at minute " + mix.fromMinute());
            fed = RunTimes.fedBy(run, mix.toMinute());
            bowl(run, mix);
        }
        expect(fed == run.minutes(), run, "fed only up to minute " + (fed == 0 ? run.startMinute() : run.endOf(fed)));
    }

    private void bowl(StaggerRun run, StaggerMix mix) {
        boolean inside = run.startMinute() <= mix.fromMinute()
                && mix.fromMinute() < mix.toMinute()
                && mix.toMinute() == run.endOf(Math.max(1, RunTimes.fedBy(run, mix.toMinute())))
                && RunTimes.placeOf(run, mix.fromMinute()) >= 0;
        expect(inside, run, "bowl outside the run at minute " + mix.fromMinute());
        if (!inside) {
            return;
        }
        int life = mix.toMinute() - mix.mixStartMinute();
        expect(life <= run.workingLifeMinutes(), run, "bowl used up to minute " + life + " of its life");
        int cost = run.bowls().cost(RunTimes.placeOf(run, mix.fromMinute()), RunTimes.fedBy(run, mix.toMinute()));
        expect(cost != BowlRule.NO_BOWL, run, "no bowl can feed from minute " + mix.fromMinute());
        if (mix.assistant() == StaggerMix.STYLIST) {
            expect(
                    mix.mixStartMinute() == mix.fromMinute() - run.mixMinutes(),
                    run,
                    "the stylist mixes at the chair's turn only");
            return;
        }
        int wait = mix.mixStartMinute() + run.mixMinutes() + problem.handOverMinutes() - mix.fromMinute();
        expect(wait <= problem.maxWaitMinutes(), run, "wait of " + wait + " minutes");
        boolean known =
                mix.assistant() >= 0 && mix.assistant() < problem.assistants().size();
        expect(known, run, "no assistant " + mix.assistant());
        expect(
                known
                        && problem.assistants()
                                .get(mix.assistant())
                                .onDuty(mix.mixStartMinute(), mix.mixStartMinute() + run.mixMinutes()),
                run,
                "assistant off duty at minute " + mix.mixStartMinute());
    }

    private void person(int assistant, List<StaggerMix> mixes) {
        List<StaggerMix> own = mixes.stream()
                .filter(mix -> mix.assistant() == assistant)
                .sorted(Comparator.comparingInt(StaggerMix::mixStartMinute))
                .toList();
        for (int i = 1; i < own.size(); i++) {
            StaggerMix before = own.get(i - 1);
            int end = before.mixStartMinute()
                    + problem.runs().get(before.runIndex()).mixMinutes();
            if (own.get(i).mixStartMinute() < end) {
                faults.add("assistant " + assistant + " mixes twice at minute "
                        + own.get(i).mixStartMinute());
            }
        }
    }

    private void scales(List<StaggerMix> mixes) {
        for (StaggerMix mix : mixes) {
            int t = mix.mixStartMinute();
            long atOnce = mixes.stream()
                    .filter(other -> other.assistant() != StaggerMix.STYLIST && other.mixStartMinute() <= t)
                    .filter(other -> t
                            < other.mixStartMinute()
                                    + problem.runs().get(other.runIndex()).mixMinutes())
                    .count();
            if (mix.assistant() != StaggerMix.STYLIST && atOnce > problem.mixesAtOnce()) {
                faults.add(atOnce + " mixes at minute " + t + ", at most " + problem.mixesAtOnce());
            }
        }
    }

    private void expect(boolean holds, StaggerRun run, String fault) {
        if (!holds) {
            faults.add("run " + run.id() + ": " + fault);
        }
    }
}
