package stirtide.demo.folder;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stirtide.events.day.Booking;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.plan.MoveAdvice.MoveEffect;
import stirtide.events.plan.MoveAdvice.ServiceMove;
import stirtide.events.plan.PlanFigures;
import stirtide.planner.salonfiles.FolderResult;

class MovesPageTest {
    private static final PlanFigures PRESENT = new PlanFigures(0, 12, 57_200, 20, 24);
    private static FolderResult.Read salon;
    private static SortedMap<Integer, Booking> bookings;

    @BeforeAll
    static void read_the_demo_salon() {
        salon = FolderPlanner.read(Path.of("salon"), Optional.empty());
        bookings = FolderPlanner.numbered(FolderPlanner.open(salon.setup(), salon.bookings()));
    }

    private static MoveEffect effect(PlanFigures then, String sentence, int... services) {
        Instant at = Instant.parse("2027-06-11T15:00:00Z");
        return new MoveEffect(
                Arrays.stream(services)
                        .mapToObj(service -> new ServiceMove(service, at, at.plusSeconds(300)))
                        .toList(),
                then,
                sentence);
    }

    private static String page(List<MoveEffect> singles, List<MoveEffect> pairs) {
        return MovesPage.page(salon.setup(), bookings, new MoveAdvice(1, PRESENT, singles, pairs, 3));
    }

    @Test
    void only_moves_worth_asking_a_client_for_are_told() {
        String page = page(
                List.of(
                        effect(new PlanFigures(0, 10, 57_200, 20, 24), "Move service 1: better.", 1),
                        effect(PRESENT, "Move service 2: no difference.", 2),
                        effect(new PlanFigures(0, 12, 57_180, 20, 24), "Move service 3: no difference.", 3),
                        effect(new PlanFigures(0, 12, 60_000, 20, 24), "Move service 4: worse.", 4)),
                List.of());
        assertThat(page)
                .contains("  - HV at chair 1: Move service 1: better.\n")
                .doesNotContain("service 2", "service 3", "service 4")
                .contains("Two moves that do more together, best first:\n  none\n");
    }

    @Test
    void a_line_names_every_client_and_chair_and_stays_within_the_page() {
        String sentence = "Move service 1 from 09:05 to 09:15 and service 2 from 09:10 to 09:20: "
                + "12 minutes less waiting, 3.0 g less not applied, 2 minutes less mixing in the busiest half hour.";
        String page = page(List.of(), List.of(effect(new PlanFigures(0, 0, 54_200, 18, 24), sentence, 1, 2)));
        assertThat(page).contains("  - HV at chair 1 and TE at chair 3: Move service 1 from 09:05");
        assertThat(page.lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80))
                .anySatisfy(line -> assertThat(line).startsWith("    ").contains("half hour."));
    }
}
