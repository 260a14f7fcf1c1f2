package stirtide.bar.desk;

import stirtide.bar.scale.ScaleReading;
import stirtide.bar.scale.SteadyWeight;
import stirtide.bar.scene.ScaleLine;
import stirtide.bar.words.WeightText;

/** What the scale said last, and whether its weight may be taken. */
final class ScaleWatch {
    private final SteadyWeight steady = new SteadyWeight();
    private ScaleLine line = ScaleLine.NONE;

    void hear(ScaleReading reading, long nanos) {
        steady.take(reading, nanos);
        line = new ScaleLine(words(reading), steady.milligrams(), steady.turn());
    }

    ScaleLine line() {
        return line;
    }

    private String words(ScaleReading reading) {
        if (reading instanceof ScaleReading.Unusable trouble) return trouble.sentence();
        var weight = (ScaleReading.Weight) reading;
        String state = steady.milligrams().isPresent() ? " g at rest" : " g, not yet at rest";
        return "scale " + WeightText.grams(weight.milligrams()) + state;
    }
}
