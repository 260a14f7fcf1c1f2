package stirtide.planner.planning.search;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** Minutes and names as people read them, and minutes as instants. */
public final class PlanText {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final PlanQuestion question;

    /** Words for one question. */
    public PlanText(PlanQuestion question) {
        this.question = question;
    }

    /** A minute of the question as an instant. */
    public Instant at(int minute) {
        return question.instantOf(minute);
    }

    /** Time of day as the salon's clock shows it, also after a change of clock: 10:05. */
    public String time(int minute) {
        return time(at(minute));
    }

    String time(Instant instant) {
        return CLOCK.format(instant.atZone(question.zone()));
    }

    /** 1 minute, 2 minutes. */
    public static String minutes(int minutes) {
        return minutes == 1 ? "1 minute" : minutes + " minutes";
    }

    /** What the salon calls a person; the id where no person has it. */
    String name(String personId) {
        return question.assistants().stream()
                .filter(each -> each.personId().equals(personId))
                .map(PlanQuestion.Assistant::name)
                .findFirst()
                .orElse(personId);
    }

    /** Ora, Ora and Ben, or Ora, Ben and Kim. */
    public static String list(List<String> names) {
        if (names.isEmpty()) return "nobody";
        if (names.size() == 1) return names.get(0);
        return String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }
}
