package stirtide.planner.plan;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A plan in the making: a course for each service placed so far, and the bar they leave. */
final class Draft {
    private final Inserter inserter;
    private final List<Track> tracks;
    private final Bar bar;
    private final @Nullable Course[] courses;
    private Score score = Score.ZERO;

    Draft(PlanQuestion question, List<Track> tracks, Inserter inserter) {
        this.inserter = inserter;
        this.tracks = tracks;
        this.bar = new Bar(question);
        this.courses = new Course[tracks.size()];
    }

    Score score() {
        return score;
    }

    Bar bar() {
        return bar;
    }

    /** Course of a service that is placed. */
    Course course(int track) {
        Course course = courses[track];
        if (course == null) throw new IllegalStateException("service is not placed");
        return course;
    }

    List<Course> courses() {
        List<Course> all = new ArrayList<>();
        for (int track = 0; track < courses.length; track++) all.add(course(track));
        return all;
    }

    void insert(int track, int keepBefore, int early) {
        put(track, inserter.insert(tracks.get(track), bar, keepBefore, early));
    }

    /** A service fed by these bowls. */
    Course course(Track track, List<Portion> portions) {
        return inserter.course(track, portions, track.noHolds());
    }

    void put(int track, Course course) {
        course.portions().forEach(bar::take);
        courses[track] = course;
        score = score.plus(course.score());
    }

    Course remove(int track) {
        Course course = course(track);
        course.portions().forEach(bar::giveBack);
        courses[track] = null;
        score = score.minus(course.score());
        return course;
    }
}
