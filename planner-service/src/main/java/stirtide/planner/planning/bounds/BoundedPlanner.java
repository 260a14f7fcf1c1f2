package stirtide.planner.planning.bounds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.BowlReason;
import stirtide.events.plan.Plan;
import stirtide.events.plan.Plan.PlanTotals;
import stirtide.planner.check.ProofCheck;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.Planner;
import stirtide.planner.planning.search.RelaxedProblem;
import stirtide.planner.planning.stagger.DelayBound;
import stirtide.planner.planning.stagger.MinutePrices;
import stirtide.planner.planning.stagger.Refutation;
import stirtide.planner.planning.stagger.SearchRounds;

/** Draws the plan of a day and says how far from the best it is at most. */
public final class BoundedPlanner {
    /** With more waiting than this in all, mixers prove no bowls: a mix may be moved too far for it to mean anything. */
    private static final int MOST_WAIT_MINUTES = 15;

    private final PlanQuestion question;
    private final Plan plan;
    private final SearchRounds rounds;

    private BoundedPlanner(PlanQuestion question, Plan plan, SearchRounds rounds) {
        this.question = question;
        this.plan = plan;
        this.rounds = rounds;
    }

    /**
     * Draws a plan with the bounds that are confirmed for it. The same question and rounds give the same plan.
     *
     * @param question all that may be known
     * @param rounds rounds of improvement and of proof granted, 0 for the first complete plan
     */
    public static Plan draw(PlanQuestion question, int rounds) {
        return draw(question, SearchRounds.of(rounds));
    }

    /**
     * Draws a plan that may be cancelled before it is done.
     *
     * @throws SearchRounds.BrokenOff when the plan is not wanted any more
     */
    public static Plan draw(PlanQuestion question, SearchRounds rounds) {
        return prove(question, Planner.draw(question, rounds), rounds);
    }

    /** The plan with the bounds that are confirmed for it. */
    static Plan prove(PlanQuestion question, Plan plan, SearchRounds rounds) {
        return new BoundedPlanner(question, plan, rounds).proven();
    }

    private Plan proven() {
        boolean stylist = plan.bowls().stream().anyMatch(bowl -> bowl.personId().isEmpty());
        int wait = plan.totals().waitMinutes();
        ProofCheck punctual = new ProofCheck(question, plan, 0);
        int unavoidable = punctual.unavoidableWait();
        if (stylist || wait < unavoidable) return plan;
        int extra = wait - unavoidable;
        RelaxedProblem problem = RelaxedProblem.of(question, plan, extra);
        ProofCheck check = extra == 0 ? punctual : new ProofCheck(question, plan, extra);
        int leastWait = leastWait(problem, check, extra);
        boolean punctualEnough = extra <= MOST_WAIT_MINUTES;
        int leastBowls = punctualEnough ? leastBowls(problem, check) : 0;
        List<BowlReason> reasons = new BowlLowerBounds(question, plan, problem, check, rounds).reasons(punctualEnough);
        return with(leastWait, Math.max(leastBowls, check.fewestAlone()), reasons);
    }

    private int leastWait(RelaxedProblem problem, ProofCheck check, int extra) {
        if (extra == 0) return check.unavoidableWait();
        MinutePrices prices = DelayBound.prices(problem.problem(), problem.services(), extra, rounds);
        return Math.min(plan.totals().waitMinutes(), check.leastWait(DelayBound.MINUTE, prices));
    }

    private int leastBowls(RelaxedProblem problem, ProofCheck check) {
        int planned = plan.totals().bowlCount();
        if (planned == 0) return 0;
        Refutation.Least least = Refutation.leastMixCost(problem.problem(), planned, rounds);
        return least.certificate()
                .filter(certificate -> check.leastBowls((int) least.mixCost(), certificate))
                .map(certificate -> (int) least.mixCost())
                .orElse(0);
    }

    private Plan with(int leastWait, int leastBowls, List<BowlReason> reasons) {
        PlanTotals is = plan.totals();
        return plan.withTotals(is.proven(
                Optional.of(leastWait), Optional.of(leastBowls), sentences(is, leastWait, leastBowls), reasons));
    }

    /** What two bounds say in words. */
    static List<String> sentences(PlanTotals is, int leastWait, int leastBowls) {
        List<String> sentences = new ArrayList<>();
        int wait = is.waitMinutes();
        if (wait > 0 && leastWait == wait)
            sentences.add("Proven: the clients cannot wait less than " + minutes(wait) + " in all.");
        else if (wait > 0)
            sentences.add(
                    leastWait == 0
                            ? "Not proven that anybody has to wait."
                            : "Proven: of " + minutes(wait) + " of waiting at least " + leastWait
                                    + " cannot be avoided.");
        sentences.add(bowls(is, leastBowls));
        return sentences;
    }

    private static String bowls(PlanTotals is, int least) {
        String as = is.waitMinutes() == 0 ? "without a wait" : "with no more waiting";
        return least == is.bowlCount()
                ? "Proven: it takes " + count(least) + " to serve all " + as + "."
                : "At most " + (is.bowlCount() - least) + " of " + count(is.bowlCount()) + " could be saved " + as
                        + ".";
    }

    private static String count(int bowls) {
        return bowls == 1 ? "1 bowl" : bowls + " bowls";
    }

    private static String minutes(int minutes) {
        return minutes == 1 ? "1 minute" : minutes + " minutes";
    }
}
