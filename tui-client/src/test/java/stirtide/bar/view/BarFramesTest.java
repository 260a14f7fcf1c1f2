package stirtide.bar.view;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.bar.RecordSamples;
import stirtide.bar.Samples;
import stirtide.bar.SetupSamples;
import stirtide.bar.desk.Bench;
import stirtide.bar.entry.AdvicePanel;
import stirtide.bar.entry.BinPanel;
import stirtide.bar.entry.BowlPanel;
import stirtide.bar.entry.DividePanel;
import stirtide.bar.entry.EarliestPanel;
import stirtide.bar.entry.FindPanel;
import stirtide.bar.entry.HelpPanel;
import stirtide.bar.entry.KeysPanel;
import stirtide.bar.entry.MovePanel;
import stirtide.bar.entry.Question;
import stirtide.bar.entry.ReasonsPanel;
import stirtide.bar.entry.ServicesPanel;
import stirtide.bar.entry.ShelvePanel;
import stirtide.bar.entry.SignOnPanel;
import stirtide.bar.entry.WalkInPanel;
import stirtide.bar.entry.WeighPanel;
import stirtide.bar.frame.Glyphs;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.Place;
import stirtide.bar.link.LinkNews;
import stirtide.bar.scene.Advice;
import stirtide.bar.scene.AlarmBoard;
import stirtide.bar.scene.DayPick;
import stirtide.bar.scene.FloorPick;
import stirtide.bar.scene.LinkLine;
import stirtide.bar.scene.Notice;
import stirtide.bar.scene.Operator;
import stirtide.bar.scene.Pages;
import stirtide.bar.scene.Panel;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.PastDay;
import stirtide.bar.scene.Picks;
import stirtide.bar.scene.ScaleLine;
import stirtide.bar.scene.Scene;
import stirtide.bar.scene.SetupPick;
import stirtide.bar.setup.SetupForms;
import stirtide.bar.setup.SetupRow;
import stirtide.bar.setup.SetupRows;
import stirtide.bar.terminal.Theme;
import stirtide.events.setup.DaySetup;
import stirtide.events.view.SetupView;

/** Every state at every size and glyph set, cell by cell, against the files in src/test/frames. */
class BarFramesTest {
    /** States by name; also drawn by the tests that look for forbidden cells. */
    static Map<String, Supplier<Scene>> states() {
        var states = new TreeMap<String, Supplier<Scene>>();
        states.put("calm", () -> Samples.scene(Samples.calm()));
        states.put("busy", () -> Samples.scene(Samples.busy()));
        states.put("quiet", () -> Samples.scene(Samples.quiet()));
        states.put("crowded", () -> Samples.scene(Samples.crowded()));
        states.put("pair", () -> Samples.scene(Samples.paired()));
        states.put("pair-open", () -> paired(new BowlPanel("7a")));
        states.put("pair-begun", () -> Samples.scene(Samples.mixed("begun")));
        states.put("pair-weighed", () -> Samples.scene(Samples.mixed("weighed")));
        states.put("pair-divide", () -> paired(new DividePanel(Samples.batch(true, false), 102_000)));
        states.put("live-picked", () -> on(new Picks(true, "", "5a"), Optional.empty()));
        states.put("lost", BarFramesTest::lost);
        states.put("waiting", BarFramesTest::nothingHeard);
        states.put("refused", BarFramesTest::refused);
        states.put("weigh-empty", () -> on(Picks.FIRST, Optional.of(WeighPanel.of(Samples.queued(0), Samples.busy()))));
        states.put("weigh-thin", () -> on(Picks.FIRST, Optional.of(weighed("40.0", "104.0"))));
        states.put(
                "bin",
                () -> on(
                        Picks.FIRST,
                        Optional.of(BinPanel.of(Samples.busy().live().get(0), true))));
        states.put("bowl", () -> on(Picks.FIRST, Optional.of(new BowlPanel("7a"))));
        states.put("services", () -> on(Picks.FIRST, Optional.of(new ServicesPanel(7))));
        states.put(
                "walk-in",
                () -> on(Picks.FIRST, Optional.of(WalkInPanel.of(Samples.calm(), Samples.scene(Samples.calm())))));
        states.put("floor-move", () -> move(Optional.empty()));
        states.put("floor-move-told", () -> move(Samples.moves().answer()));
        states.put("earliest", () -> on(Picks.FIRST, Optional.of(EarliestPanel.of(Samples.calm()))));
        states.put(
                "one-more",
                () -> on(Picks.FIRST, Optional.of(HelpPanel.of(Samples.calm(), Samples.scene(Samples.calm())))));
        states.put("setup", () -> setup(SetupSamples.complete(), 9, Optional.empty()));
        states.put("setup-begun", () -> setup(SetupSamples.begun(), 4, Optional.empty()));
        states.put("setup-form", BarFramesTest::setupForm);
        states.put("setup-refused", BarFramesTest::setupRefused);
        states.put("sign-on", BarFramesTest::signOn);
        states.put("why", () -> on(Picks.FIRST, Optional.of(new ReasonsPanel())));
        states.put("keys", () -> on(Picks.FIRST, Optional.of(new KeysPanel())));
        states.put("find", () -> on(Picks.FIRST, Optional.of(new FindPanel())));
        states.put(
                "question",
                () -> on(
                        Picks.FIRST,
                        Optional.of(new Question(
                                "TAKE BACK?", "bowl 5a weighed 40.0 + 80.0 g", new PanelAnswer.Leave(), 0))));
        states.put("floor", () -> floor(FloorPick.FIRST));
        states.put("floor-lifted", () -> floor(new FloorPick(7, true, 25, 0, 0)));
        states.put("floor-later", () -> floor(new FloorPick(9, false, 0, 60, 10)));
        states.put("day", () -> day(DayPick.FIRST, Samples.past()));
        states.put("day-no-past", () -> day(new DayPick(DayPick.Sort.BOWL, 1), List.of()));
        states.put(
                "day-weeks",
                () -> day(new DayPick(DayPick.Sort.STYLIST, 1, DayPick.Period.FOUR_WEEKS), Samples.past()));
        states.put("advice", () -> advised(Pages.BAR.to(Place.FLOOR).with(Samples.moves())));
        states.put(
                "advice-asked",
                () -> advised(Pages.BAR
                        .to(Place.FLOOR)
                        .with(new Advice(new Advice.Ask.Moves(), -3_500_000_000L, Optional.empty()))));
        states.put("test-mixes", () -> typed("t", RecordSamples.tests()));
        states.put("costs", () -> typed("g", RecordSamples.grams()));
        states.put(
                "compare",
                () -> Bench.with(Samples.busy())
                        .hear(new LinkNews.Seen(Samples.replanned()))
                        .type("2d")
                        .scene());
        states.put("visits", () -> typed("sv", RecordSamples.visits()));
        states.put("flood", BarFramesTest::flood);
        states.put(
                "shelve",
                () -> on(
                        Picks.FIRST,
                        Optional.of(ShelvePanel.of(
                                Samples.scene(Samples.busy()).board().rows().get(1)))));
        return states;
    }

    private static Scene signOn() {
        Scene nobody = Samples.scene(Samples.calm());
        var panel = SignOnPanel.of(nobody, "mix: sign on first, then press the key again");
        return new Scene(
                nobody.view(),
                nobody.now(),
                nobody.nanos(),
                nobody.ratePermille(),
                false,
                nobody.link(),
                Operator.nobody(),
                nobody.picks(),
                Optional.of(panel),
                List.of());
    }

    /** The bar after these keys and the answer to what they ask. */
    private static Scene typed(String keys, Advice told) {
        return Bench.with(Samples.busy())
                .type(keys)
                .hear(new LinkNews.Tried(told))
                .scene();
    }

    private static Scene paired(Panel panel) {
        return Samples.scene(Samples.paired(), Samples.LIVE, Picks.FIRST, Optional.of(panel));
    }

    private static Scene advised(Pages pages) {
        return Samples.scene(Samples.calm(), Samples.LIVE, Picks.FIRST, Optional.of(new AdvicePanel("WHAT TO MOVE")))
                .with(pages);
    }

    private static Scene floor(FloorPick pick) {
        return Samples.scene(Samples.calm()).with(Pages.BAR.to(Place.FLOOR).with(pick));
    }

    private static Scene day(DayPick pick, List<PastDay> past) {
        return Samples.scene(Samples.calm())
                .with(Pages.BAR.to(Place.DAY).with(pick).withPast(past));
    }

    private static Scene flood() {
        Scene scene = Samples.scene(Samples.busy());
        var rows = List.of(
                new AlarmBoard.Row(List.of(Samples.alarm("PAST_LIFE", 1), Samples.alarm("PAST_LIFE", 4)), -1, true),
                new AlarmBoard.Row(List.of(Samples.alarm("LOW_LIFE", 2), Samples.alarm("LOW_LIFE", 3)), -1, false));
        var tally = new AlarmBoard.Tally(Samples.at(-60), 2, 7, 3, 12, 150, "LOW_LIFE", 7);
        return new Scene(
                scene.view(),
                scene.now(),
                0,
                1000,
                false,
                scene.link(),
                scene.operator(),
                scene.picks(),
                Optional.empty(),
                List.of(),
                Pages.BAR.to(Place.DAY),
                new AlarmBoard(rows, 2, true, tally),
                ScaleLine.NONE);
    }

    private static Scene on(Picks picks, Optional<Panel> panel) {
        return Samples.scene(Samples.busy(), Samples.LIVE, picks, panel);
    }

    private static Panel weighed(String lightener, String developer) {
        Panel panel = WeighPanel.of(Samples.busy().live().get(3), Samples.busy());
        Scene scene = Samples.scene(Samples.busy());
        type(panel, lightener, scene);
        panel.press(Key.of(Key.Kind.ENTER, 0), false, scene);
        type(panel, developer, scene);
        return panel;
    }

    private static void type(Panel panel, String text, Scene scene) {
        for (char letter : text.toCharArray()) panel.press(Key.of(letter, 0), false, scene);
    }

    private static Scene setup(SetupView told, int row, Optional<Panel> panel) {
        var scene = Samples.scene(Samples.busy(), Samples.LIVE, Picks.FIRST, panel);
        return scene.with(
                Pages.BAR.to(Place.SETUP).with(SetupPick.FIRST.with(told).on(row)));
    }

    private static Scene move(Optional<Advice.Answer> told) {
        var ask = new Advice.Ask.Move(7, Samples.at(25));
        var panel = new MovePanel(
                ask,
                "Move service 7 (chair 5 214, Half head of foils) from 11:50 to 12:05? Ask the client first.",
                new PanelAnswer.Close(),
                0);
        var scene = Samples.scene(Samples.busy(), Samples.LIVE, Picks.FIRST, Optional.of(panel));
        return scene.with(Pages.BAR.to(Place.FLOOR).with(new Advice(ask, 0, told)));
    }

    private static Panel form(String word) {
        DaySetup setup = SetupSamples.complete().setup();
        SetupRow row = SetupRows.of(setup).stream()
                .filter(each -> each.text().contains(word))
                .findFirst()
                .orElseThrow();
        return ((PanelAnswer.Open) SetupForms.change(setup, row)).next();
    }

    private static Scene setupForm() {
        return setup(SetupSamples.complete(), 9, Optional.of(form("Dune Powder, powder")));
    }

    private static Scene setupRefused() {
        Panel form = form("Foam 20");
        Scene scene = setup(SetupSamples.complete(), 7, Optional.of(form));
        form.press(Key.of(Key.Kind.UP, 0), false, scene);
        var send = (PanelAnswer.Send) form.press(Key.of(Key.Kind.ENTER, 0), false, scene);
        form.answered(
                send.command(),
                Optional.of("pack price: \"8.4567\" is not accepted; accepted: a price with at most 2 decimals, as EUR "
                        + "has."));
        return scene;
    }

    private static Scene lost() {
        return Samples.scene(Samples.busy(), new LinkLine(LinkLine.State.LOST, 72, 3), Picks.FIRST, Optional.empty());
    }

    private static Scene nothingHeard() {
        Scene scene = Samples.scene(Samples.calm());
        return new Scene(
                Optional.empty(),
                scene.now(),
                0,
                0,
                false,
                new LinkLine(LinkLine.State.CONNECTING, 0, 0),
                scene.operator(),
                Picks.FIRST,
                Optional.empty(),
                List.of());
    }

    private static Scene refused() {
        Scene scene = Samples.scene(Samples.calm());
        var notice = new Notice("NOT TAKEN  bowl 7a begun: bowl 7a was begun by Bohdan at 11:39; mix 8a next", true);
        return new Scene(
                scene.view(),
                scene.now(),
                0,
                1000,
                true,
                scene.link(),
                scene.operator(),
                scene.picks(),
                Optional.empty(),
                List.of(notice));
    }

    private static Scene state(String name) {
        return Objects.requireNonNull(states().get(name)).get();
    }

    static Stream<Arguments> frames() {
        return states().keySet().stream()
                .flatMap(name -> Stream.of(
                        Arguments.of(name, 80, 24, Glyphs.FULL),
                        Arguments.of(name, 120, 36, Glyphs.FULL),
                        Arguments.of(name, 80, 24, Glyphs.ASCII)));
    }

    @ParameterizedTest
    @MethodSource("frames")
    void the_frame_is_the_one_kept(String name, int columns, int rows, Glyphs glyphs) throws IOException {
        GoldenFrames.check(name, state(name), columns, rows, glyphs);
    }

    static Stream<Arguments> looks() {
        return Stream.of("calm", "busy", "lost", "weigh-thin", "refused", "floor-lifted", "day")
                .flatMap(name -> Stream.of(Theme.MONO, Theme.LIGHT)
                        .flatMap(theme ->
                                Stream.of(Arguments.of(name, 80, 24, theme), Arguments.of(name, 120, 36, theme))));
    }

    @ParameterizedTest
    @MethodSource("looks")
    void the_look_without_color_and_on_a_light_ground_is_the_one_kept(String name, int columns, int rows, Theme theme)
            throws IOException {
        GoldenFrames.checkLooks(name, state(name), columns, rows, theme);
    }
}
