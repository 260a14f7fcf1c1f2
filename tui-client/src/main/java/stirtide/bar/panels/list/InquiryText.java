package stirtide.bar.panels.list;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.UiState;

/** What the service answers to the newest inquiry, as lines of text. */
public final class InquiryText {

    private InquiryText() {}

    /** The answer, empty while it is worked out. */
    public static Optional<Inquiry.Answer> answer(UiState state) {
        return state.pages().advice().flatMap(Inquiry::answer);
    }

    /** The lines of an answer of one kind, none for an answer of another kind; why there is none, or that it is awaited. */
    public static <A extends Inquiry.Answer> List<String> lines(
            UiState state, Class<A> kind, Function<A, List<String>> lines) {
        Optional<Inquiry.Answer> answer = answer(state);
        if (answer.isEmpty()) {
            long asked = state.pages().advice().map(Inquiry::askedNanos).orElse(state.nanos());
            return List.of("the service works it out, " + seconds(asked, state.nanos())
                    + " s so far; nothing is changed by it");
        }
        if (answer.get() instanceof Inquiry.Answer.Failed failed) return List.of("no answer: " + failed.sentence());
        return kind.isInstance(answer.get()) ? lines.apply(kind.cast(answer.get())) : List.of();
    }

    /** Whole seconds between two monotonic readings, 0 or more. */
    public static long seconds(long fromNanos, long toNanos) {
        return Math.max(0, TimeUnit.NANOSECONDS.toSeconds(toNanos - fromNanos));
    }
}
