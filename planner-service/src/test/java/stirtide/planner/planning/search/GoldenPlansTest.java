package stirtide.planner.planning.search;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import stirtide.events.json.ContractJson;
import stirtide.events.plan.Plan;
import stirtide.planner.planning.bounds.TwoStepPlanner;

/**
 * Plans of 200 seeded days as version 0.1.0 drew them: a digest of the JSON of each. A change that is meant to draw other
 * plans replaces {@code plans-of-200-days.sha256} by {@code target/plans-of-200-days.sha256} and says why.
 */
class GoldenPlansTest {
    private static final Path GOLDEN = Path.of("src/test/resources/golden/plans-of-200-days.sha256");
    private static final Path DRAWN = Path.of("target/plans-of-200-days.sha256");
    private static final int DAYS = 200;
    private static final int MOST_ROUNDS = 3;
    private static final int[] LOADS = {0, 40};

    @Test
    void plans_of_200_seeded_days_are_the_same_byte_for_byte() throws IOException {
        List<String> lines = new ArrayList<>();
        for (int seed = 0; seed < DAYS; seed++) lines.add(seed + " " + digest(ContractJson.write(plan(seed))));
        Files.write(DRAWN, lines);
        assertThat(lines).isEqualTo(Files.readAllLines(GOLDEN));
    }

    /** One kind of question and of search after the other: half of the plans are drawn in two steps. */
    private static Plan plan(int seed) {
        PlanQuestion question = seed % 3 == 2
                ? RandomQuestion.loaded(seed, 12 + seed * 7 % 5, LOADS[seed / 3 % LOADS.length])
                : RandomQuestion.of(seed, 3 + seed * 7 % 17);
        int rounds = seed / 2 % (MOST_ROUNDS + 1);
        return seed % 2 == 0 ? Planner.draw(question, rounds) : TwoStepPlanner.first(question, rounds);
    }

    private static String digest(String text) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(UTF_8)));
        } catch (NoSuchAlgorithmException notInThisJava) {
            throw new IllegalStateException(notInThisJava);
        }
    }
}
