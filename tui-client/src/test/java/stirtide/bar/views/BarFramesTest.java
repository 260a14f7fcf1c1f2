package stirtide.bar.views;

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
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.bar.RecordSamples;
import stirtide.bar.Samples;
import stirtide.bar.SetupSamples;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.controller.ControllerFixture;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.model.AlarmList;
import stirtide.bar.model.BowlSelection;
import stirtide.bar.model.DayOverMix;
import stirtide.bar.model.FloorSelection;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.LinkStatus;
import stirtide.bar.model.Notice;
import stirtide.bar.model.Operator;
import stirtide.bar.model.OverMixSelection;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.SetupRow;
import stirtide.bar.model.SetupRows;
import stirtide.bar.model.SetupSelection;
import stirtide.bar.model.UiState;
import stirtide.bar.model.ViewState;
import stirtide.bar.panels.FindBowlPanel;
import stirtide.bar.panels.KeysPanel;
import stirtide.bar.panels.ShelvePanel;
import stirtide.bar.panels.SignOnPanel;
import stirtide.bar.panels.details.BowlPanel;
import stirtide.bar.panels.details.ReasonsPanel;
import stirtide.bar.panels.form.ConfirmPanel;
import stirtide.bar.panels.planner.AdvicePanel;
import stirtide.bar.panels.planner.MoveServicePanel;
import stirtide.bar.panels.planner.PlannerForms;
import stirtide.bar.panels.services.ServicesPanel;
import stirtide.bar.panels.services.WalkInPanel;
import stirtide.bar.panels.setup.SetupForms;
import stirtide.bar.panels.weighing.BinPanel;
import stirtide.bar.panels.weighing.DividePanel;
import stirtide.bar.panels.weighing.WeighPanel;
import stirtide.bar.terminal.Theme;
import stirtide.events.setup.DaySetup;
import stirtide.events.view.DayView;
import stirtide.events.view.SetupView;

/** Every state at every size and glyph set, cell by cell, against the files in src/test/frames. */
class BarFramesTest {
    /** States by name; also drawn by the tests that look for forbidden cells. */
    static Map<String, Supplier<UiState>> states() {
        var states = new TreeMap<String, Supplier<UiState>>();
        states.put("calm", () -> Samples.scene(Samples.calm()));
        states.put("busy", () -> Samples.scene(Samples.busy()));
        states.put("quiet", () -> Samples.scene(Samples.quiet()));
        states.put("crowded", () -> Samples.scene(Samples.crowded()));
        states.put("pair", () -> Samples.scene(Samples.paired()));
        states.put("pair-open", () -> paired(BowlPanel.of("7a")));
        states.put("pair-begun", () -> Samples.scene(Samples.mixed("begun")));
        states.put("pair-weighed", () -> Samples.scene(Samples.mixed("weighed")));
        states.put("pair-divide", () -> paired(new DividePanel(Samples.batch(true, false), 102_000)));
        states.put("live-picked", () -> on(new BowlSelection(true, "", "5a"), Optional.empty()));
        states.put("lost", BarFramesTest::lost);
        states.put("waiting", BarFramesTest::nothingHeard);
        states.put("refused", BarFramesTest::refused);
        states.put(
                "weigh-empty",
                () -> on(BowlSelection.FIRST, Optional.of(WeighPanel.of(Samples.queued(0), Samples.busy()))));
        states.put("weigh-thin", () -> on(BowlSelection.FIRST, Optional.of(weighed("40.0", "104.0"))));
        states.put(
                "bin",
                () -> on(
                        BowlSelection.FIRST,
                        Optional.of(BinPanel.of(Samples.busy().live().get(0), true))));
        states.put("bowl", () -> on(BowlSelection.FIRST, Optional.of(BowlPanel.of("7a"))));
        states.put("services", () -> on(BowlSelection.FIRST, Optional.of(new ServicesPanel(7))));
        states.put(
                "walk-in",
                () -> on(
                        BowlSelection.FIRST,
                        Optional.of(WalkInPanel.of(Samples.calm(), Samples.scene(Samples.calm())))));
        states.put("floor-move", () -> move(Optional.empty()));
        states.put("floor-move-told", () -> move(Samples.moves().answer()));
        states.put("earliest", () -> on(BowlSelection.FIRST, Optional.of(PlannerForms.earliestStart(Samples.calm()))));
        states.put(
                "one-more",
                () -> on(
                        BowlSelection.FIRST,
                        Optional.of(PlannerForms.extraAssistant(Samples.calm(), Samples.scene(Samples.calm())))));
        states.put("setup", () -> setup(SetupSamples.complete(), 9, Optional.empty()));
        states.put("setup-begun", () -> setup(SetupSamples.begun(), 4, Optional.empty()));
        states.put("setup-form", BarFramesTest::setupForm);
        states.put("setup-refused", BarFramesTest::setupRefused);
        states.put("sign-on", BarFramesTest::signOn);
        states.put("why", () -> on(BowlSelection.FIRST, Optional.of(ReasonsPanel.of())));
        states.put("keys", () -> on(BowlSelection.FIRST, Optional.of(KeysPanel.of())));
        states.put("find", () -> on(BowlSelection.FIRST, Optional.of(new FindBowlPanel())));
        states.put(
                "question",
                () -> on(
                        BowlSelection.FIRST,
                        Optional.of(new ConfirmPanel(
                                "TAKE BACK?", "bowl 5a weighed 40.0 + 80.0 g", new UiEffect.Quit(), 0))));
        states.put("floor", () -> floor(FloorSelection.FIRST));
        states.put(
                "floor-lifted",
                () -> floor(FloorSelection.FIRST.on(7).withLifted(true).withShiftMinutes(25)));
        states.put(
                "floor-later",
                () -> floor(FloorSelection.FIRST.on(9).withScrollMinutes(60).withCellMinutes(10)));
        states.put("floor-people", () -> people(Samples.calm(), 0));
        states.put("floor-people-many", () -> people(Samples.staffed(30), 3));
        states.put("floor-people-none", () -> people(Samples.withPeople(Samples.quiet(), List.of()), 0));
        states.put("day", () -> day(OverMixSelection.FIRST, Samples.past()));
        states.put("day-no-past", () -> day(new OverMixSelection(OverMixSelection.Sort.BOWL, 1), List.of()));
        states.put(
                "day-weeks",
                () -> day(
                        new OverMixSelection(OverMixSelection.Sort.STYLIST, 1, OverMixSelection.Period.FOUR_WEEKS),
                        Samples.past()));
        states.put("advice", () -> advised(ViewState.BAR.to(KeyContext.FLOOR).with(Samples.moves())));
        states.put(
                "advice-asked",
                () -> advised(ViewState.BAR
                        .to(KeyContext.FLOOR)
                        .with(new Inquiry(new Inquiry.Ask.Moves(), -3_500_000_000L, Optional.empty()))));
        states.put("test-mixes", () -> typed("t", RecordSamples.tests()));
        states.put("costs", () -> typed("g", RecordSamples.grams()));
        states.put(
                "compare",
                () -> ControllerFixture.with(Samples.busy())
                        .hear(new LinkEvent.Seen(Samples.replanned()))
                        .type("2d")
                        .scene());
        states.put("visits", () -> typed("sv", RecordSamples.visits()));
        states.put("flood", BarFramesTest::flood);
        states.put(
                "shelve",
                () -> on(
                        BowlSelection.FIRST,
                        Optional.of(ShelvePanel.of(
                                Samples.scene(Samples.busy()).alarms().rows().get(1)))));
        return states;
    }

    private static UiState people(DayView view, int person) {
        var lanes = FloorSelection.FIRST.otherLanes().withPerson(person);
        return Samples.scene(view).withPages(ViewState.BAR.to(KeyContext.FLOOR).withFloor(lanes));
    }

    private static UiState signOn() {
        UiState nobody = Samples.scene(Samples.calm());
        var panel = SignOnPanel.of(nobody, "mix: sign on first, then press the key again");
        return Samples.under(panel, nobody.withOperator(Operator.signOnNeeded()));
    }

    /** The bar after these keys and the answer to what they ask. */
    private static UiState typed(String keys, Inquiry told) {
        return ControllerFixture.with(Samples.busy())
                .type(keys)
                .hear(new LinkEvent.Tried(told))
                .scene();
    }

    private static UiState paired(Panel panel) {
        return Samples.scene(Samples.paired(), Samples.LIVE, BowlSelection.FIRST, Optional.of(panel));
    }

    private static UiState advised(ViewState pages) {
        return Samples.under(
                new AdvicePanel("WHAT TO MOVE"), Samples.scene(Samples.calm()).withPages(pages));
    }

    private static UiState floor(FloorSelection pick) {
        return Samples.scene(Samples.calm())
                .withPages(ViewState.BAR.to(KeyContext.FLOOR).withFloor(pick));
    }

    private static UiState day(OverMixSelection pick, List<DayOverMix> past) {
        return Samples.scene(Samples.calm())
                .withPages(ViewState.BAR.to(KeyContext.DAY).withDay(pick).withPast(past));
    }

    private static UiState flood() {
        UiState scene = Samples.scene(Samples.busy());
        var rows = List.of(
                new AlarmList.Row(List.of(Samples.alarm("PAST_LIFE", 1), Samples.alarm("PAST_LIFE", 4)), -1, true),
                new AlarmList.Row(List.of(Samples.alarm("LOW_LIFE", 2), Samples.alarm("LOW_LIFE", 3)), -1, false));
        var tally = new AlarmList.Tally(Samples.at(-60), 2, 7, 3, 12, 150, "LOW_LIFE", 7);
        return scene.withPages(ViewState.BAR.to(KeyContext.DAY)).withAlarms(new AlarmList(rows, 2, true, tally));
    }

    private static UiState on(BowlSelection picks, Optional<Panel> panel) {
        return Samples.scene(Samples.busy(), Samples.LIVE, picks, panel);
    }

    private static Panel weighed(String lightener, String developer) {
        Panel panel = WeighPanel.of(Samples.busy().live().get(3), Samples.busy());
        UiState scene = Samples.scene(Samples.busy());
        type(panel, lightener, scene);
        panel.press(Key.of(Key.Kind.ENTER, 0), false, scene);
        type(panel, developer, scene);
        return panel;
    }

    private static void type(Panel panel, String text, UiState scene) {
        for (char letter : text.toCharArray()) panel.press(Key.of(letter, 0), false, scene);
    }

    private static UiState setup(SetupView told, int row, Optional<Panel> panel) {
        var scene = Samples.scene(Samples.busy())
                .withPages(ViewState.BAR
                        .to(KeyContext.SETUP)
                        .withSetup(SetupSelection.FIRST.with(told).on(row)));
        return panel.map(open -> Samples.under(open, scene)).orElse(scene);
    }

    private static UiState move(Optional<Inquiry.Answer> told) {
        var ask = new Inquiry.Ask.Move(7, Samples.at(25));
        var panel = new MoveServicePanel(
                ask,
                "Move service 7 (chair 5 214, Half head of foils) from 11:50 to 12:05? Ask the client first.",
                new UiEffect.Close(),
                0);
        var scene = Samples.scene(Samples.busy())
                .withPages(ViewState.BAR.to(KeyContext.FLOOR).with(new Inquiry(ask, 0, told)));
        return Samples.under(panel, scene);
    }

    private static Panel form(String word) {
        DaySetup setup = SetupSamples.complete().setup();
        SetupRow row = SetupRows.of(setup).stream()
                .filter(each -> each.text().contains(word))
                .findFirst()
                .orElseThrow();
        return ((UiEffect.Open) SetupForms.change(setup, row)).next();
    }

    private static UiState setupForm() {
        return setup(SetupSamples.complete(), 9, Optional.of(form("Dune Powder, powder")));
    }

    private static UiState setupRefused() {
        Panel form = form("Foam 20");
        UiState scene = setup(SetupSamples.complete(), 7, Optional.of(form));
        form.press(Key.of(Key.Kind.UP, 0), false, scene);
        var send = (UiEffect.Send) form.press(Key.of(Key.Kind.ENTER, 0), false, scene);
        form.answered(
                send.command(),
                Optional.of("pack price: \"8.4567\" is not accepted; accepted: a price with at most 2 decimals, as EUR "
                        + "has."));
        return scene;
    }

    private static UiState lost() {
        return Samples.scene(
                Samples.busy(), new LinkStatus(LinkStatus.State.LOST, 72, 3), BowlSelection.FIRST, Optional.empty());
    }

    private static UiState nothingHeard() {
        UiState scene = Samples.scene(Samples.calm());
        return UiState.of(
                Optional.empty(),
                new UiState.ClockReading(scene.now(), 0, 0, false),
                new LinkStatus(LinkStatus.State.CONNECTING, 0, 0),
                scene.operator());
    }

    private static UiState refused() {
        UiState scene = Samples.scene(Samples.calm());
        var notice = new Notice("NOT TAKEN  bowl 7a begun: bowl 7a was begun by Bohdan at 11:39; mix 8a next", true);
        return scene.withClock(new UiState.ClockReading(scene.now(), 0, 1000, true))
                .withNotices(List.of(notice));
    }

    private static UiState state(String name) {
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
    @ValueSource(strings = {"floor-people", "floor-people-many"})
    void the_frame_of_a_large_screen_is_the_one_kept(String name) throws IOException {
        GoldenFrames.check(name, state(name), 200, 50, Glyphs.FULL);
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
