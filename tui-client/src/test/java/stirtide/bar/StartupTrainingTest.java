package stirtide.bar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;

class StartupTrainingTest {
    private static final Path SAMPLE = Path.of("src/main/resources/stirtide/bar/startup-training.json");

    /** With {@code -Dframes.update=true} the day of the training run is written anew. */
    @Test
    void the_day_of_the_training_run_is_one_the_contract_knows() throws IOException {
        String day = ContractJson.write(Samples.busy());
        if (Boolean.getBoolean("frames.update")) Files.writeString(SAMPLE, day);
        assertThat(ContractJson.write(ContractJson.read(Files.readString(SAMPLE), DayView.class)))
                .isEqualTo(day);
    }
}
