package stirtide.bar.panels.weighing;

import java.util.Optional;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.events.command.DayCommand;

/** What the answers of the service mean for a panel that weighs into a bowl. */
final class MixingAnswers {
    private MixingAnswers() {}

    /** Closes the panel of a bowl when the start of its mixing, or the weights of its batch, were rejected. */
    static Optional<UiEffect> closeWhenRefused(String bowl, DayCommand command, Optional<String> refusal) {
        boolean own = command instanceof DayCommand.BeginBowl begin && bowl.equals(begin.bowl())
                || command instanceof DayCommand.BeginBatch batch
                        && batch.bowls().contains(bowl)
                || command instanceof DayCommand.WeighBatch weigh && bowl.equals(weigh.batch());
        return own && refusal.isPresent() ? Optional.of(new UiEffect.Close()) : Optional.empty();
    }
}
