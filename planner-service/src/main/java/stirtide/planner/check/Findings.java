package stirtide.planner.check;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import stirtide.planner.planning.search.PlanQuestion;

/** What is wrong with a plan, in the order it was found, and the minutes of its instants. */
final class Findings {
    private final PlanQuestion question;
    private final List<String> sentences = new ArrayList<>();

    Findings(PlanQuestion question) {
        this.question = question;
    }

    void unless(boolean holds, String sentence, Object... values) {
        if (!holds) sentences.add(String.format(java.util.Locale.ROOT, sentence, values));
    }

    /** Minutes since the start of the day; a finding when the instant is not on a whole minute. */
    int minute(Instant instant, String what) {
        Duration since = Duration.between(question.dayStart(), instant);
        unless(since.getSeconds() % 60 == 0 && since.getNano() == 0, "%s: %s is not on a whole minute", what, instant);
        return (int) Math.floorDiv(since.getSeconds(), 60L);
    }

    List<String> sentences() {
        return List.copyOf(sentences);
    }
}
