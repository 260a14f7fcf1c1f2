package stirtide.planner.plan;

import java.util.List;
import java.util.Optional;

/** Bounds that hold for every plan of the question, where there is a short proof. Empty where there is none. */
final class Bounds {
    private final PlanQuestion question;
    private final List<Course> courses;

    Bounds(PlanQuestion question, List<Course> courses) {
        this.question = question;
        this.courses = courses;
    }

    private boolean assistantsMixAll() {
        return courses.stream()
                .flatMap(course -> course.portions().stream())
                .noneMatch(portion -> portion.person() == Portion.STYLIST);
    }

    /**
     * Least wait of plans in which assistants mix: nobody waits a negative time, and the first bowl of a service cannot be
     * at the chair before somebody on duty could have mixed it, started now at the earliest.
     */
    Optional<Integer> wait(int planned) {
        if (planned == 0) return Optional.of(0);
        if (!assistantsMixAll()) return Optional.empty();
        return Optional.of(courses.stream().mapToInt(this::leastWait).sum());
    }

    private int leastWait(Course course) {
        Track track = course.track();
        int at = 0;
        while (at < track.minutes()
                && (track.need(at, at + 1) == 0 || track.feed(at).refusal().isPresent())) at++;
        if (at == track.minutes() || !track.feed(at).live().isEmpty()) return 0;
        int mixMinutes = track.feed(at).recipe().mixMinutes();
        int earliest = question.assistants().stream()
                .flatMap(each -> each.onDuty().stream().map(duty -> new int[] {
                    Math.max(duty.from(), Math.max(question.nowMinute(), each.busyUntilMinute())), duty.to()
                }))
                .filter(span -> span[0] + mixMinutes <= span[1])
                .mapToInt(span -> span[0])
                .min()
                .orElse(0);
        return Math.max(0, earliest + mixMinutes + question.handOverMinutes() - track.starts()[at]);
    }

    /**
     * Least number of bowls of plans in which nobody waits: each feed takes bowls as long as life and the roomiest bowl
     * allow, each as fresh as can be. A late bowl reaches further, so nothing is said when somebody waits.
     */
    Optional<Integer> bowls(int plannedWait) {
        if (plannedWait > 0) return Optional.empty();
        return Optional.of(
                courses.stream().mapToInt(course -> leastBowls(course.track())).sum());
    }

    private int leastBowls(Track track) {
        int bowls = 0;
        int[] delays = new int[track.minutes()];
        int[] holds = track.noHolds();
        int roomiest = question.bowlSizes().stream()
                .mapToInt(size -> size.usableMilligrams() - size.residueMilligrams())
                .max()
                .orElse(0);
        for (Feed feed : track.feeds()) {
            if (feed.refusal().isPresent()) continue;
            int at = LiveFeeding.feed(track, feed, 0, holds, delays).minute();
            while (at < feed.to()) {
                if (track.need(at, at + 1) == 0) {
                    at++;
                    continue;
                }
                int lifeEnd = track.starts()[at]
                        - feed.recipe().mixMinutes()
                        - question.handOverMinutes()
                        + feed.recipe().lifeMinutes();
                int to = at + 1;
                while (to < feed.to() && track.endOf(to + 1) <= lifeEnd && track.need(at, to + 1) <= roomiest) to++;
                at = to;
                bowls++;
            }
        }
        return bowls;
    }
}
