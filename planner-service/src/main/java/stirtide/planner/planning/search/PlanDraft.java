package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A plan in the making: a course for each service placed so far, and the bar they leave. */
final class PlanDraft {
    private final ServiceInserter inserter;
    private final List<ServiceTimeline> tracks;
    private final ResourceCalendar bar;
    private final @Nullable ServicePlan[] courses;
    private SearchScore score = SearchScore.ZERO;

    PlanDraft(PlanQuestion question, List<ServiceTimeline> tracks, ServiceInserter inserter) {
        this.inserter = inserter;
        this.tracks = tracks;
        this.bar = new ResourceCalendar(question);
        this.courses = new ServicePlan[tracks.size()];
    }

    SearchScore score() {
        return score;
    }

    ResourceCalendar bar() {
        return bar;
    }

    /** Course of a service that is placed. */
    ServicePlan course(int track) {
        ServicePlan course = courses[track];
        if (course == null) throw new IllegalStateException("service is not placed");
        return course;
    }

    List<ServicePlan> courses() {
        List<ServicePlan> all = new ArrayList<>();
        for (int track = 0; track < courses.length; track++) all.add(course(track));
        return all;
    }

    void insert(int track, int keepBefore, int early) {
        put(track, inserter.insert(tracks.get(track), bar, keepBefore, early));
    }

    /** A service fed by these bowls. */
    ServicePlan course(ServiceTimeline track, List<MixAssignment> portions) {
        return inserter.course(track, portions, track.noHolds());
    }

    void put(int track, ServicePlan course) {
        course.portions().forEach(bar::take);
        courses[track] = course;
        score = score.plus(course.score());
    }

    ServicePlan remove(int track) {
        ServicePlan course = course(track);
        course.portions().forEach(bar::giveBack);
        courses[track] = null;
        score = score.minus(course.score());
        return course;
    }
}
