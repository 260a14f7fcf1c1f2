package stirtide.planner.plan;

import java.time.Instant;
import java.util.List;
import java.util.Locale;

/** Minutes and names as people read them, and minutes as instants. */
final class Words {
    private final PlanQuestion question;

    Words(PlanQuestion question) {
        this.question = question;
    }

    Instant at(int minute) {
        return question.dayStart().plusSeconds(60L * minute);
    }

    /** Time of day, counted from the start of the day: 10:05. */
    static String time(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", Math.floorDiv(minute, 60) % 24, Math.floorMod(minute, 60));
    }

    static String minutes(int minutes) {
        return minutes == 1 ? "1 minute" : minutes + " minutes";
    }

    /** Ora, Ora and Ben, or Ora, Ben and Kim. */
    static String names(List<String> ids) {
        List<String> names = ids.stream()
                .map(id -> id.isEmpty() ? id : id.substring(0, 1).toUpperCase(Locale.ROOT) + id.substring(1))
                .toList();
        if (names.isEmpty()) return "nobody";
        if (names.size() == 1) return names.get(0);
        return String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }
}
