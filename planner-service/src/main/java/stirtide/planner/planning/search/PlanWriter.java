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
    private final PlanText words;

    PlanWriter(PlanQuestion question, ShownPlan shown, PlanDraft draft) {
        this.question = question;
        this.shown = shown;
        this.draft = draft;
        this.words = new PlanText(question);
    }

    Plan write(int rounds) {
        List<PlannedBowl> bowls = new ArrayList<>();
        List<PlannedService> services = new ArrayList<>();
        List<PlanNote> notes = new ArrayList<>();
        List<ServicePlan> courses = draft.courses().stream()
                .sorted(Comparator.comparingInt(course -> course.track().task().service()))
                .toList();
        for (ServicePlan course : courses) {
            bowls.addAll(bowls(course));
            ZoneSchedule timeline = new ZoneSchedule(question, course);
            services.add(timeline.service());
            notes.addAll(new PlanningNotes(question, course, timeline).all());
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
                new WaitReasons(question, draft.bar(), courses).reasons(),
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

    private List<PlannedBowl> bowls(ServicePlan course) {
        List<PlannedBowl> bowls = new ArrayList<>();
        for (int place = 0; place < course.portions().size(); place++) bowls.add(bowl(course, place));
        return bowls;
    }

    private PlannedBowl bowl(ServicePlan course, int place) {
        MixAssignment portion = course.portions().get(place);
        ServiceTimeline track = course.track();
        BowlSize size = question.bowlSizes().get(portion.size());
        List<String> zones = new ArrayList<>();
        for (ServiceTimeline.ZoneSlot slot : track.zones())
            if (slot.from() < portion.to() && portion.from() < slot.to())
                zones.add(slot.zone().zone());
        return new PlannedBowl(
                ShownPlan.idOf(track.task(), place),
                track.task().service(),
                portion.feed().run(),
                track.task().chair(),
                zones,
                words.at(portion.mix()),
                words.at(portion.mixEnd()),
                words.at(portion.use()),
                words.at(portion.end()),
                words.at(portion.mix() + portion.feed().recipe().lifeMinutes()),
                portion.person() == MixAssignment.STYLIST
                        ? java.util.Optional.empty()
                        : java.util.Optional.of(
                                question.assistants().get(portion.person()).personId()),
                question.scales().get(portion.scale()).scaleId(),
                size.bowlSizeId(),
                track.need(portion.from(), portion.to()),
                size.residueMilligrams(),
                portion.weigh().formula(),
                course.waitFor(portion));
    }
}
