package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stirtide.events.plan.Plan.PlanNote;
import stirtide.planner.planning.floor.FloorDay;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;
import stirtide.planner.planning.search.ZoneSchedule.Stay;

/** What could not be planned as wished for one service, each with its reason. */
final class PlanningNotes {
    private final PlanQuestion question;
    private final ServicePlan plan;
    private final ZoneSchedule schedule;
    private final FloorSeats seats;
    private final PlanText words;
    private final List<PlanNote> notes = new ArrayList<>();

    PlanningNotes(PlanQuestion question, ServicePlan plan, ZoneSchedule schedule, FloorSeats seats) {
        this.seats = seats;
        this.question = question;
        this.plan = plan;
        this.schedule = schedule;
        this.words = new PlanText(question);
    }

    List<PlanNote> all() {
        if (plan.timeline().minutes() > 0)
            seats.clash(plan.timeline().task().service()).ifPresent(this::notAsBooked);
        for (String split : plan.timeline().splits()) note("RUN_SPLIT", split);
        for (FeedSegment feed : plan.timeline().feeds()) feed.refusal().ifPresent(refusal -> noFormula(feed, refusal));
        for (int place = 0; place < plan.assignments().size(); place++)
            if (plan.assignments().get(place).person() == MixAssignment.STYLIST) stylist(place);
        for (Stay stay : schedule.stays()) {
            if (stay.rinse() < stay.common()) rinsedEarly(stay);
            if (stay.rinseBy() < Math.max(stay.end(), question.nowMinute())) over(stay);
        }
        return notes;
    }

    private void note(String kind, String sentence) {
        notes.add(new PlanNote(kind, plan.timeline().task().service(), sentence));
    }

    private void notAsBooked(FloorSeats.Taken taken) {
        ServiceTask task = plan.timeline().task();
        String until = " until " + words.time(taken.until());
        note(
                "NOT_AS_BOOKED",
                "Service " + task.service() + " has no place as booked: "
                        + switch (taken.cause()) {
                            case STYLIST_APPLIES -> "its stylist applies on service " + taken.before() + until;
                            case STYLIST_OFF_DUTY -> "its stylist is not on duty for all of its application" + until;
                            case CHAIR_TAKEN ->
                                "chair " + task.chair() + " is taken by service " + taken.before() + until;
                        }
                        + ". It is planned as if it had one: give it another time, stylist or chair.");
    }

    private void noFormula(FeedSegment feed, FeedSegment.Refusal refusal) {
        String zones = plan.timeline().zones().stream()
                .filter(slot -> slot.from() >= feed.from() && slot.to() <= feed.to())
                .map(slot -> slot.zone().zone())
                .collect(Collectors.joining(", "));
        note(
                "NO_FORMULA",
                "Nothing can be mixed for " + zones + ": " + refusal.reason() + " What helps: " + refusal.whatHelps());
    }

    private void stylist(int place) {
        MixAssignment assignment = plan.assignments().get(place);
        int ready = assignment.use() - plan.waitFor(assignment);
        int mixMinutes = assignment.feed().recipe().mixMinutes();
        String why;
        if (question.assistants().isEmpty()) why = "no assistant works today";
        else if (question.assistants().stream()
                .flatMap(each -> each.onDuty().stream())
                .noneMatch(duty -> Math.max(duty.from(), question.nowMinute()) + mixMinutes <= duty.to()
                        && duty.to() > ready - assignment.feed().recipe().lifeMinutes()))
            why = "no assistant is on duty any more";
        else
            why = "no assistant can have the bowl at the chair within " + PlanText.minutes(FloorDay.MOST_WAIT_MINUTES)
                    + " of " + words.time(ready);
        note(
                "STYLIST_MIXES",
                "The stylist mixes " + ShownPlan.idOf(plan.timeline().task(), place) + " at "
                        + words.time(assignment.mix()) + ": " + why + ".");
    }

    private void rinsedEarly(Stay stay) {
        note(
                "RINSE_EARLY",
                stay.zone() + " is rinsed at " + words.time(stay.rinse()) + ", "
                        + PlanText.minutes(stay.common() - stay.rinse())
                        + " before the rest of its section: its longest processing time ends then.");
    }

    private void over(Stay stay) {
        note(
                "PROCESSING_OVER",
                "The longest processing time of " + stay.zone() + " ends at "
                        + words.time(stay.rinseBy()) + ", before "
                        + (stay.end() > stay.rinseBy()
                                ? "all of it is applied: rinse what is applied, and ask the colorist before going on."
                                : "now: rinse at once."));
    }
}
