package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.command.DayCommand.AcknowledgeAlarm;
import stirtide.events.command.DayCommand.CancelService;
import stirtide.events.command.DayCommand.FinishBowl;
import stirtide.events.command.DayCommand.HandOverBowl;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Menu.MenuEntry;

/** Every refusal says what would help, and nobody gets round one: not by rank, not by asking again, not by a switch. */
class NoWayRoundTest {
    private static final Path SOURCES = Path.of("src/main/java/stirtide/planner");

    /** A refusal in the code: its name, then its words, with whatever stands between them. */
    private static final Pattern REFUSAL =
            Pattern.compile("(?:refuse|refusal|Refusal|Refusal\\.of)\\(\\s*\"([A-Z]{3,}_[A-Z_]+)\",([^;]*);");

    private static final Pattern WORDS = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

    /** Words by which a sentence says what to do or what is accepted. */
    private static final Pattern HELPS =
            Pattern.compile("[Aa]ccepted|Nothing is left|[Oo]nly | at most|in order|lie on|starts once|[Ee]ach "
                    + "|[0-9] to |or more|more than 0|initials"
                    + "|\\b([Nn]ame|[Bb]egin|[Ff]inish|[Bb]in|[Bb]ook|[Mm]ove|[Uu]se|[Oo]pen|[Ww]eigh|[Hh]and|[Ss]tart"
                    + "|[Cc]orrect|[Cc]hoose) ");

    private static final Pattern SWITCH =
            Pattern.compile("(?i)force|overrid|ignore|anyway|confirm|skip|bypass|unsafe|despite");

    private static Map<String, List<String>> refusals() throws IOException {
        Map<String, List<String>> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(one -> one.toString().endsWith(".java"))
                    .sorted()
                    .toList()) {
                Matcher refusal = REFUSAL.matcher(Files.readString(file));
                while (refusal.find())
                    found.computeIfAbsent(refusal.group(1), code -> new java.util.ArrayList<>())
                            .add(words(refusal.group(2)));
            }
        }
        return found;
    }

    private static String words(String code) {
        return WORDS.matcher(code).results().map(word -> word.group(1)).reduce("", String::concat);
    }

    @Test
    void every_refusal_code_comes_with_what_would_help() throws IOException {
        var refusals = refusals();
        assertThat(refusals)
                .hasSizeGreaterThan(60)
                .containsKeys("PAST_LIFE", "OUTSIDE_DIRECTIONS", "SERVICE_CANCELLED");
        refusals.forEach((code, sentences) -> assertThat(sentences)
                .as(code)
                .allSatisfy(sentence -> assertThat(
                                sentence.isEmpty() || HELPS.matcher(sentence).find())
                        .as(sentence)
                        .isTrue()));
    }

    @Test
    void no_command_has_a_switch_that_makes_the_day_agree() {
        var commands = Stream.concat(
                Stream.of(CommandRequest.class), Arrays.stream(DayCommand.class.getPermittedSubclasses()));
        var parts = commands.flatMap(command -> Arrays.stream(command.getRecordComponents()))
                .toList();
        assertThat(parts)
                .extracting(RecordComponent::getName)
                .noneMatch(name -> SWITCH.matcher(name).find());
        // the one yes-or-no there is chooses between two formulas, both of which are inside the directions
        assertThat(parts.stream().filter(part -> part.getType() == boolean.class))
                .extracting(RecordComponent::getName)
                .containsExactly("asLastTime");
    }

    @Test
    void neither_the_contract_nor_the_terminal_knows_such_a_switch() throws IOException {
        try (var in = Objects.requireNonNull(getClass().getResourceAsStream("/openapi.yaml"))) {
            var names = Pattern.compile("(?m)^\\s*(?:- )?name: (\\S+)|^ +(\\w+):\\s*$")
                    .matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .results()
                    .map(match -> match.group())
                    .toList();
            assertThat(names)
                    .isNotEmpty()
                    .noneMatch(name -> SWITCH.matcher(name).find());
        }
        try (Stream<Path> files = Files.walk(Path.of("../tui-client/src/main/java"))) {
            for (Path file : files.filter(one -> one.getFileName().toString().matches("Options|Action|.*Options.java"))
                    .toList())
                assertThat(Files.readString(file)).doesNotContainPattern("\"--(force|override|ignore|unsafe)");
        }
    }

    /** What protects a client, with the scene in which it is refused. */
    record Danger(String code, Scene scene, DayCommand command) {
        @Override
        public String toString() {
            return code;
        }
    }

    static List<Danger> dangers() {
        return List.of(
                new Danger("PAST_LIFE", weighed().at("10:40").ticks(), new HandOverBowl("1a")),
                new Danger(
                        "OUTSIDE_DIRECTIONS",
                        Scene.begun().does(Scene.weigh("1a", 30_000, 30_000)),
                        new HandOverBowl("1a")),
                new Danger("NOT_WEIGHED", Scene.begun(), new HandOverBowl("1a")),
                new Danger("SERVICE_CANCELLED", weighed().does(new CancelService(1, "left")), new HandOverBowl("1a")),
                new Danger("NOT_AT_CHAIR", weighed(), new FinishBowl("1a")),
                new Danger("BOWL_AT_CHAIR", Scene.atChair(), Scene.weigh("1a", 30_000, 60_000)));
    }

    private static Scene weighed() {
        return Scene.begun().does(Scene.weigh("1a", 30_000, 60_000));
    }

    @ParameterizedTest
    @MethodSource("dangers")
    void rank_patience_and_seen_alarms_change_nothing(Danger danger) {
        var scene = danger.scene();
        for (var alarm : Alarms.of(scene.day, scene.now)) scene.does(new AcknowledgeAlarm(alarm.id()));
        for (var person : scene.day.opened().salon().people())
            for (int i = 0; i < 3; i++)
                assertThat(scene.as(person.personId())
                                .refused(danger.command(), danger.code())
                                .sentence())
                        .matches(sentence -> HELPS.matcher(sentence).find());
    }

    /** A menu that asks for more than the directions or the law permit cannot even be opened, whoever asks. */
    @Test
    void a_menu_beyond_the_directions_or_the_law_is_not_opened() {
        var setup = Given.setup();
        var zone = setup.menu().entries().get(0).zones().get(0);
        var strong = new Menu.MenuZone(zone.zone(), zone.technique(), zone.lightenerId(), 1200, 2000, 1, 1, 0, 1, 1);
        var menu = new Menu(
                List.of(new MenuEntry("foils", "Foils", List.of(strong))),
                setup.menu().lengthPermille(),
                setup.menu().densityPermille());
        var beyond = new stirtide.events.setup.DaySetup(
                setup.date(), setup.salon(), setup.developers(), setup.directions(), menu);
        var rule = setup.directions().get(0).techniques().get(0);
        assertThat(rule).isEqualTo(new Directions.TechniqueRule("foil", false, 1500, 2500, 900, 55));
        for (var person : setup.salon().people())
            assertThat(new Scene()
                            .as(person.personId())
                            .refused(new OpenDay(beyond, List.of()), "SETUP_INVALID")
                            .sentence())
                    .contains("The directions permit up to 30 vol (9 %)");
    }
}
