package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Most verification intervals of a range by OIML R 76-1:2006, table 3 (no limit for class I). */
class ScaleClassTest {
    @TempDir
    Path temp;

    @ParameterizedTest
    @CsvSource({"II,10000,0.1,100000", "III,1000,0.1,10000", "IIII,5000,5,1000"})
    void a_range_has_at_most_the_intervals_of_its_class(String accuracyClass, String most, String interval, int count) {
        TestFolder folder = new TestFolder(temp)
                .with("salon.json", "\"accuracyClass\": \"II\"", "\"accuracyClass\": \"" + accuracyClass + "\"")
                .with("salon.json", "\"verificationGrams\": 0.1", "\"verificationGrams\": " + interval)
                .with("salon.json", "\"maximumGrams\": 600", "\"maximumGrams\": " + most);
        assertThat(folder.accepted(Optional.empty()).setup().salon().scales()).hasSize(1);
        folder.with("salon.json", "\"maximumGrams\": " + most, "\"maximumGrams\": " + most + ".01");
        assertThat(folder.rejected(Optional.empty()).problems().get(0).accepted())
                .isEqualTo("at most " + count + " verification intervals, as class " + accuracyClass
                        + " permits (OIML R 76-1, Table 3)");
    }
}
