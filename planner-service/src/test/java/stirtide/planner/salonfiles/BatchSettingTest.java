package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.planner.salonfiles.export.SetupFiles;

class BatchSettingTest {
    @TempDir
    Path temp;

    @Test
    void whether_two_bowls_may_be_one_mix_follows_the_salon_file_and_is_written_back() {
        var wanted = new TestFolder(temp)
                .with("salon.json", "\"washMinutes\": 8,", "\"washMinutes\": 8, \"oneMixTwoBowls\": true,")
                .accepted(Optional.empty())
                .setup();
        assertThat(wanted.salon().oneMixTwoBowls()).contains(true);
        assertThat(SetupFiles.of(wanted, List.of()).get("salon.json")).containsPattern("\"oneMixTwoBowls\" ?: true");
    }

    @Test
    void a_salon_that_says_nothing_wants_none_and_nothing_is_written() {
        var plain = new TestFolder(temp).accepted(Optional.empty()).setup();
        assertThat(plain.salon().oneMixTwoBowls()).isEmpty();
        assertThat(SetupFiles.of(plain, List.of()).get("salon.json")).doesNotContain("oneMixTwoBowls");
    }

    @Test
    void anything_but_yes_or_no_is_refused() {
        var rejected = new TestFolder(temp)
                .with("salon.json", "\"washMinutes\": 8,", "\"washMinutes\": 8, \"oneMixTwoBowls\": \"often\",")
                .rejected(Optional.empty());
        assertThat(String.join("\n", rejected.lines()))
                .contains("oneMixTwoBowls")
                .contains("true or false");
    }
}
