package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.TimeZone;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.CloudEvent;
import stirtide.events.json.ContractJson;
import stirtide.planner.views.DayViews;

/** The same log gives the same view, byte for byte, wherever the machine stands and whatever language it speaks. */
class PlaceOfTheMachineTest {
    private static final int DAYS = 40;
    private static final int STEPS = 30;
    private static final int REAL_PERMILLE = 1000;

    private static String view(List<StoredEvent> log) {
        var day = Evolver.replay(log.stream()
                .map(event -> CloudEvent.read(CloudEvent.of(event).write()).toStored())
                .toList());
        return ContractJson.write(DayViews.of(day, day.time(), REAL_PERMILLE));
    }

    /** Turkish has another small i, Arabic other digits, Apia lies on the other side of the date line. */
    @ParameterizedTest
    @CsvSource({"tr-TR, Pacific/Apia", "ar-EG-u-nu-arab, Asia/Kathmandu", "th-TH-u-ca-buddhist, America/St_Johns"})
    void a_replay_elsewhere_gives_the_same_bytes(String language, String zone) {
        var homeLanguage = Locale.getDefault();
        var homeZone = TimeZone.getDefault();
        var random = new SplittableRandom(17);
        for (int number = 0; number < DAYS; number++) {
            var played = new RandomDay(random.split());
            for (int step = 0; step < STEPS; step++) played.step();
            String here = view(played.scene.log);
            try {
                Locale.setDefault(Locale.forLanguageTag(language));
                TimeZone.setDefault(TimeZone.getTimeZone(zone));
                assertThat(view(played.scene.log)).as("day %d", number).isEqualTo(here);
            } finally {
                Locale.setDefault(homeLanguage);
                TimeZone.setDefault(homeZone);
            }
        }
    }
}
