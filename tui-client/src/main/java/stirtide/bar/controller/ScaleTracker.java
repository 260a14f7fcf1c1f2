package stirtide.bar.controller;

import stirtide.bar.model.ScaleStatus;
import stirtide.bar.scale.ScaleReading;
import stirtide.bar.scale.SteadyWeight;
import stirtide.bar.text.WeightText;

/** What the scale said last, and whether its weight may be taken. */
final class ScaleTracker {
    private final SteadyWeight steady = new SteadyWeight();
    private ScaleStatus line = ScaleStatus.NONE;

    void hear(ScaleReading reading, long nanos) {
        steady.take(reading, nanos);
        line = new ScaleStatus(words(reading), steady.milligrams(), steady.turn());
    }

    ScaleStatus line() {
        return line;
    }

    private String words(ScaleReading reading) {
        if (reading instanceof ScaleReading.Unusable trouble) return trouble.sentence();
        var weight = (ScaleReading.Weight) reading;
        String state = steady.milligrams().isPresent() ? " g at rest" : " g, not yet at rest";
        return "scale " + WeightText.grams(weight.milligrams()) + state;
    }
}
