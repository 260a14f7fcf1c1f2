package stirtide.bar.controller;

import java.util.Optional;
import stirtide.bar.model.UiEffect;

/** Answers that end in a passing line for the person: words, copies, files. */
final class LocalEffects {
    private LocalEffects() {}

    /** Adds the line; whether there was one. */
    static boolean told(UiEffect answer, LocalServices aside, NoticeList notes) {
        Optional<String> words = of(answer, aside);
        words.ifPresent(line -> notes.add(line, false));
        return words.isPresent();
    }

    /** The line, empty for every other answer. */
    private static Optional<String> of(UiEffect answer, LocalServices aside) {
        if (answer instanceof UiEffect.Say say) return Optional.of(say.words());
        if (answer instanceof UiEffect.Copy copy) return Optional.of(aside.copy(copy.text()));
        if (answer instanceof UiEffect.Export export) return Optional.of(aside.export(export.view(), export.past()));
        if (answer instanceof UiEffect.WriteFiles files) return Optional.of(aside.writeFiles(files.setup()));
        return Optional.empty();
    }
}
