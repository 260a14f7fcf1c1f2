package stirtide.bar.panels.weighing;

import java.util.Optional;
import stirtide.events.view.PourAdvice;

/** When to ask the service what to pour next, and its answer. The service is asked once for each state of the fields. */
final class PourInquiry {
    /** Waits this long after the last key, so that the service is not asked about half a number. */
    private static final long REST_NANOS = 300_000_000L;

    private String typed = "";
    private long typedAtNanos;
    private String asked = "";
    private String answeredFor = "";
    private Optional<PourAdvice> advice = Optional.empty();

    /** Whether to ask now. */
    boolean isToBeAsked(String poured, long nanos) {
        if (!poured.equals(typed)) {
            typed = poured;
            typedAtNanos = nanos;
        }
        if (poured.isEmpty() || poured.equals(asked) || nanos - typedAtNanos < REST_NANOS) return false;
        asked = poured;
        return true;
    }

    void answered(PourAdvice said, String poured) {
        advice = Optional.of(said);
        answeredFor = poured;
    }

    /** What the service said of exactly these weights. */
    Optional<String> sentence(String poured) {
        return poured.isEmpty() || !poured.equals(answeredFor) ? Optional.empty() : advice.map(PourAdvice::sentence);
    }
}
