package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.Plan;
import stirtide.events.plan.Plan.PlanNote;
import stirtide.events.plan.Plan.PlanTotals;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.plan.PlannedService;
import stirtide.events.setup.BowlSize;

/** Writes a draft down as the plan that is recorded and shown. */
final class PlanWriter {
    private final PlanQuestion question;
    private final ShownPlan shown;
    private final PlanDraft draft;

    PlanWriter(PlanQuestion question, ShownPlan shown, PlanDraft draft) {
        this.question = question;
        this.shown = shown;
        this.draft = draft;
    }

    Plan write(int rounds) {
        List<PlannedBowl> bowls = new ArrayList<>();
        List<PlannedService> services = new ArrayList<>();
        List<PlanNote> notes = new ArrayList<>();
        List<ServicePlan> plans = draft.plans().stream()
                .sorted(Comparator.comparingInt(
                        placed -> placed.timeline().task().service()))
                .toList();
        List<ZoneSchedule> schedules =
                plans.stream().map(placed -> new ZoneSchedule(question, placed)).toList();
        FloorSeats seats = new FloorSeats(question, plans, schedules);
        for (int place = 0; place < plans.size(); place++) {
            ServicePlan placed = plans.get(place);
            ZoneSchedule schedule = schedules.get(place);
            bowls.addAll(bowls(placed));
            services.add(schedule.service());
            notes.addAll(new PlanningNotes(question, placed, schedule, seats).all());
        }
        bowls.sort(Comparator.comparing(PlannedBowl::mixStart)
                .thenComparing(PlannedBowl::service)
                .thenComparing(bowl -> bowl.bowl().length())
                .thenComparing(PlannedBowl::bowl));
        notes.addAll(StockShortage.notes(question, bowls));
        return new Plan(
                question.basedOnRevision(),
                question.asOf(),
                rounds,
                bowls,
                services,
                new WaitReasons(question, draft.bar(), plans, seats).reasons(),
                notes,
                totals(bowls, services),
                new PlanChangeText(question, shown, bowls).sentences(),
                List.of(),
                Optional.empty());
    }

    private PlanTotals totals(List<PlannedBowl> bowls, List<PlannedService> services) {
        int wait = services.stream().mapToInt(PlannedService::waitMinutes).sum();
        int mixed = bowls.stream()
                .mapToInt(bowl -> bowl.formula().totalMilligrams())
                .sum();
        int over = bowls.stream()
                .mapToInt(bowl -> bowl.formula().totalMilligrams() - bowl.neededMilligrams() - bowl.residueMilligrams())
                .sum();
        return new PlanTotals(wait, bowls.size(), mixed, over, draft.score().ageMinutes());
    }

    private List<PlannedBowl> bowls(ServicePlan placed) {
        List<PlannedBowl> bowls = new ArrayList<>();
        for (int place = 0; place < placed.assignments().size(); place++) bowls.add(bowl(placed, place));
        return bowls;
    }

    private PlannedBowl bowl(ServicePlan placed, int place) {
        MixAssignment assignment = placed.assignments().get(place);
        ServiceTimeline timeline = placed.timeline();
        BowlSize size = question.bowlSizes().get(assignment.size());
        List<String> zones = new ArrayList<>();
        for (ServiceTimeline.ZoneSlot slot : timeline.zones())
            if (slot.from() < assignment.to() && assignment.from() < slot.to())
                zones.add(slot.zone().zone());
        return new PlannedBowl(
                ShownPlan.idOf(timeline.task(), place),
                timeline.task().service(),
                assignment.feed().run(),
                timeline.task().chair(),
                zones,
                question.instantOf(assignment.mix()),
                question.instantOf(assignment.mixEnd()),
                question.instantOf(assignment.use()),
                question.instantOf(assignment.end()),
                question.instantOf(assignment.mix() + assignment.feed().recipe().lifeMinutes()),
                assignment.person() == MixAssignment.STYLIST
                        ? java.util.Optional.empty()
                        : java.util.Optional.of(
                                question.assistants().get(assignment.person()).personId()),
                question.scales().get(assignment.scale()).scaleId(),
                size.bowlSizeId(),
                timeline.need(assignment.from(), assignment.to()),
                size.residueMilligrams(),
                assignment.weigh().formula(),
                placed.waitFor(assignment));
    }
}
