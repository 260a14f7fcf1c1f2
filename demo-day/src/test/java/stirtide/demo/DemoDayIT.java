package stirtide.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import stirtide.demo.folder.FolderPlanner;
import stirtide.demo.live.PrintedDay;
import stirtide.demo.play.DayScript;
import stirtide.demo.play.PlayedDay;
import stirtide.demo.print.DayChecks;
import stirtide.demo.print.DayChecks.Check;
import stirtide.demo.print.DayReport;
import stirtide.demo.print.PrepSheet;
import stirtide.events.day.DayEvent;
import stirtide.events.day.OverMixCause;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.CloudEvent;
import stirtide.planner.salonfiles.FolderResult;

/** The demo day through the real service, twice. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DemoDayIT {
    private FolderResult.Read salon;
    private PlayedDay first;
    private PlayedDay second;
    private List<Check> checks;

    @BeforeAll
    void play_the_day_twice() throws IOException, InterruptedException {
        salon = FolderPlanner.read(DemoFolders.SALON, Optional.empty());
        DayScript script = DayScript.read(DemoFolders.SALON.resolve("script.json"));
        first = PrintedDay.play(salon, script);
        second = PrintedDay.play(salon, script);
        checks = DayChecks.of(salon.setup(), first);
    }

    @Test
    void the_same_day_played_twice_prints_the_same_bytes() {
        assertThat(DayReport.of(salon.setup(), second, checks)).isEqualTo(DayReport.of(salon.setup(), first, checks));
    }

    /** What {@code demo-day/run --print} prints, as version 0.1.0 printed it. */
    @Test
    void the_printed_day_is_the_same_byte_for_byte() throws IOException {
        String printed = PrepSheet.of(FolderPlanner.plan(salon), salon.notes()) + "\n"
                + DayReport.of(salon.setup(), first, checks);
        Files.writeString(Path.of("target", "demo-day.txt"), printed);
        assertThat(printed).isEqualTo(Files.readString(Path.of("src/test/resources/golden/demo-day.txt")));
    }

    @Test
    void the_same_day_played_twice_leaves_the_same_events() {
        assertThat(told(second)).isEqualTo(told(first)).hasSizeGreaterThan(300);
    }

    /** Event ids and the keys of clients are random; everything else is not. */
    private static List<String> told(PlayedDay day) {
        return day.events().stream()
                .map(event -> new StoredEvent(
                        "-",
                        event.day(),
                        event.revision(),
                        event.time(),
                        event.actor(),
                        event.commandId(),
                        event.event()))
                .map(event -> CloudEvent.of(event).write().replaceAll("sealed:(c[0-9]+):[A-Za-z0-9_-]+", "$1"))
                .toList();
    }

    @Test
    void every_check_of_the_played_day_holds() {
        assertThat(checks)
                .hasSize(6)
                .allSatisfy(
                        check -> assertThat(check.holds()).as(check.sentence()).isTrue());
    }

    @Test
    void the_separate_checker_saw_a_plan_for_almost_every_turn_of_the_day() {
        assertThat(checks.stream().map(Check::sentence))
                .anyMatch(sentence ->
                        sentence.matches("No hard rule is broken by any of the [1-9][0-9]{2} plans drawn\\."));
    }

    @Test
    void the_script_of_the_day_was_played() {
        Map<String, Long> kinds = first.events().stream()
                .map(event -> event.event().getClass().getSimpleName())
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        assertThat(kinds).containsEntry("ServiceMoved", 1L).containsEntry("ServiceBooked", 17L);
        assertThat(kinds).containsEntry("ServiceStarted", 17L).containsEntry("DayClosed", 1L);
        assertThat(causes()).contains(OverMixCause.SPILLED, OverMixCause.PAST_LIFE, OverMixCause.LEFT_OVER);
        assertThat(first.events().stream().map(StoredEvent::event))
                .anyMatch(event -> event instanceof DayEvent.BowlWeighed weighed && !weighed.insideDirections());
    }

    private List<OverMixCause> causes() {
        return first.events().stream()
                .map(StoredEvent::event)
                .filter(event -> event instanceof DayEvent.BowlBinned)
                .map(event -> ((DayEvent.BowlBinned) event).cause())
                .toList();
    }

    @Test
    void no_command_of_the_played_day_is_refused() {
        assertThat(first.refusals()).isEmpty();
    }

    @Test
    void no_line_of_the_report_is_wider_than_a_page() {
        assertThat(DayReport.of(salon.setup(), first, checks).lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    }

    @Test
    void nothing_of_the_day_stays_in_the_temporary_folder() throws IOException {
        try (var left = java.nio.file.Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            assertThat(left.map(path -> path.getFileName().toString()))
                    .noneMatch(name -> name.startsWith(
                            "stirtide-demo-" + ProcessHandle.current().pid() + "-"));
        }
    }
}
