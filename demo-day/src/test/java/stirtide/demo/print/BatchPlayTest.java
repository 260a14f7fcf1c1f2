package stirtide.demo.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.demo.DemoFolders;
import stirtide.demo.folder.FolderPlanner;
import stirtide.demo.play.BarSimulation;
import stirtide.demo.play.DayScript;
import stirtide.demo.play.SetupLookup;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.Decider;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.planning.search.Planner;
import stirtide.planner.salonfiles.FolderResult;
import stirtide.planner.views.DayViews;

/** The demo salon with a setting and a bowl that let its first two clients of the day have one mix. */
class BatchPlayTest {
    @TempDir
    Path folder;

    private FolderResult.Read salon;
    private final List<StoredEvent> log = new ArrayList<>();
    private Day day;

    @BeforeEach
    void let_two_bowls_be_one_mix() throws IOException {
        Path file = DemoFolders.copyOfSalon(folder).resolve("salon.json");
        Files.writeString(
                file,
                Files.readString(file)
                        .replace("\"washMinutes\": 5,", "\"washMinutes\": 5, \"oneMixTwoBowls\": true,")
                        .replace("\"residueGrams\": 3.5", "\"residueGrams\": 2"));
        salon = FolderPlanner.read(folder, Optional.empty());
        day = FolderPlanner.day(salon);
        day.history().events().forEach(log::add);
    }

    @Test
    void the_prep_sheet_tells_what_to_weigh_together_and_what_to_pour() {
        String sheet = PrepSheet.of(FolderPlanner.plan(salon), salon.notes());
        assertThat(sheet)
                .contains("ONE MIX, TWO BOWLS: ")
                .contains("then divide by weight: ")
                .contains("from the mix of ");
        assertThat(sheet.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    }

    @Test
    void the_people_of_the_day_mix_once_divide_and_carry_both_bowls() throws IOException {
        var bar = new BarSimulation(
                new SetupLookup(salon.setup()), DayScript.read(DemoFolders.SALON.resolve("script.json")));
        var opens = FolderPlanner.plan(salon).plan().bowls().get(0).mixStart();
        for (int minute = -5; minute < 15; minute++) play(bar, opens.plusSeconds(60L * minute));
        assertThat(told(DayEvent.BatchBegun.class)).isEqualTo(1);
        assertThat(told(DayEvent.BatchWeighed.class)).isEqualTo(1);
        assertThat(told(DayEvent.BatchDivided.class)).isEqualTo(1);
        var mixed = BowlSummary.of(log).stream()
                .filter(story -> day.bowl(story.bowl).orElseThrow().batch().isPresent())
                .toList();
        assertThat(mixed).hasSize(2).allSatisfy(story -> {
            BowlState bowl = day.bowl(story.bowl).orElseThrow();
            assertThat(story.mixed()).isEqualTo(bowl.mixedMilligrams());
            assertThat(story.handedOverAt).isPresent();
            assertThat(story.inside).isTrue();
        });
    }

    private long told(Class<? extends DayEvent> kind) {
        return log.stream().map(StoredEvent::event).filter(kind::isInstance).count();
    }

    /** One minute: plans are drawn at once, everything the bar would do is asked of the rules and must be accepted. */
    private void play(BarSimulation bar, Instant now) {
        PlanQuestions.of(day)
                .ifPresent(
                        question -> keep(new DayEvent.PlanDrawn(Planner.draw(question, 0)), now, StoredEvent.SERVICE));
        for (var deed = bar.next(DayViews.of(day, now, 1000));
                deed.isPresent();
                deed = bar.next(DayViews.of(day, now, 1000))) {
            Decision decision = Decider.decide(
                    day,
                    deed.get().command(),
                    new CommandContext(now, deed.get().actor()));
            assertThat(decision).as(deed.get().toString()).isInstanceOf(Decision.Accepted.class);
            for (DayEvent event : ((Decision.Accepted) decision).events())
                keep(event, now, deed.get().actor());
        }
    }

    private void keep(DayEvent event, Instant at, String actor) {
        long revision = day.revision() + 1;
        var stored = new StoredEvent("e-" + revision, log.get(0).day(), revision, at, actor, "c-" + revision, event);
        log.add(stored);
        day = Evolver.evolve(day, stored);
    }
}
