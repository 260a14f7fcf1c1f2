package stirtide.bar.panels;

import java.util.List;
import java.util.Optional;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.UiState;

/** What the service answers to a question, to read. */
public abstract class InquiryPanel extends TextPanel {
    private static final long NANOS_TO_SECONDS = 1_000_000_000L;

    /** The answer in sentences; another kind of answer gives none. */
    protected abstract List<String> told(Inquiry.Answer answer, UiState scene);

    /** What was answered, empty while it is worked out. */
    protected static Optional<Inquiry.Answer> answer(UiState scene) {
        return scene.pages().advice().flatMap(Inquiry::answer);
    }

    @Override
    protected final List<String> sentences(UiState scene) {
        Optional<Inquiry.Answer> answer = answer(scene);
        if (answer.isEmpty()) {
            long asked = scene.pages().advice().map(Inquiry::askedNanos).orElse(scene.nanos());
            return List.of("the service works it out, " + Math.max(0, (scene.nanos() - asked) / NANOS_TO_SECONDS)
                    + " s so far; nothing is changed by it");
        }
        if (answer.get() instanceof Inquiry.Answer.Failed failed) return List.of("no answer: " + failed.sentence());
        return told(answer.get(), scene);
    }
}
