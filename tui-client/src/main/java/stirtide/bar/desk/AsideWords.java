package stirtide.bar.desk;

import java.util.Optional;
import stirtide.bar.scene.PanelAnswer;

/** Answers that end in a passing line for the person: words, copies, files. */
final class AsideWords {
    private AsideWords() {}

    /** Adds the line; whether there was one. */
    static boolean told(PanelAnswer answer, Aside aside, Notes notes) {
        Optional<String> words = of(answer, aside);
        words.ifPresent(line -> notes.add(line, false));
        return words.isPresent();
    }

    /** The line, empty for every other answer. */
    private static Optional<String> of(PanelAnswer answer, Aside aside) {
        if (answer instanceof PanelAnswer.Say say) return Optional.of(say.words());
        if (answer instanceof PanelAnswer.Copy copy) return Optional.of(aside.copy(copy.text()));
        if (answer instanceof PanelAnswer.Export export) return Optional.of(aside.export(export.view(), export.past()));
        if (answer instanceof PanelAnswer.WriteFiles files) return Optional.of(aside.writeFiles(files.setup()));
        return Optional.empty();
    }
}
