package stirtide.bar.entry;

import java.util.List;
import java.util.Optional;
import stirtide.bar.scene.Advice;
import stirtide.bar.scene.Scene;

/** What the service answers to a question, to read. */
public abstract class AskedPanel extends ReadingPanel {
    private static final long NANOS_TO_SECONDS = 1_000_000_000L;

    /** The answer in sentences; another kind of answer gives none. */
    protected abstract List<String> told(Advice.Answer answer, Scene scene);

    /** What was answered, empty while it is worked out. */
    protected static Optional<Advice.Answer> answer(Scene scene) {
        return scene.pages().advice().flatMap(Advice::answer);
    }

    @Override
    protected final List<String> sentences(Scene scene) {
        Optional<Advice.Answer> answer = answer(scene);
        if (answer.isEmpty()) {
            long asked = scene.pages().advice().map(Advice::askedNanos).orElse(scene.nanos());
            return List.of("the service works it out, " + Math.max(0, (scene.nanos() - asked) / NANOS_TO_SECONDS)
                    + " s so far; nothing is changed by it");
        }
        if (answer.get() instanceof Advice.Answer.Failed failed) return List.of("no answer: " + failed.sentence());
        return told(answer.get(), scene);
    }
}
