package stirtide.planner.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A small helping of what {@code planner-service/trials/run hostile-input} throws at the service, always the same. */
class HostileInputIT {
    private static final int REQUESTS = 1_200;
    private static final long SEED = 7;

    @TempDir
    Path folder;

    @Test
    void whatever_is_sent_is_answered_as_the_contract_says_and_tells_nobody_what_is_not_for_them() throws Exception {
        HostileInput.Report report = HostileInput.run(folder, REQUESTS, SEED);
        assertThat(report.faults()).isEmpty();
        // The generator reached everything: each operation was asked for, and most were carried out.
        assertThat(asked(report, ".*"))
                .containsAll(new ContractBook()
                        .operations().stream().map(ContractBook.Operation::id).toList());
        assertThat(asked(report, "20[0-9]"))
                .contains("listDays", "openDay", "showDay", "showSetup", "sendCommand", "readEvents", "followDay");
        assertThat(report.answers().keySet()).anyMatch(kind -> kind.startsWith("raw bytes 4"));
    }

    private static Set<String> asked(HostileInput.Report report, String status) {
        return report.operations().keySet().stream()
                .filter(line -> line.matches("\\S+ " + status))
                .map(line -> line.replaceFirst(" .*", ""))
                .collect(Collectors.toSet());
    }
}
