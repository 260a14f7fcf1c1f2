package stirtide.bar.controller;

import java.util.Optional;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyBurstFilter;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.link.ServiceGateway;
import stirtide.bar.model.AlarmList;
import stirtide.bar.model.BowlSelection;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.Operator;
import stirtide.bar.model.Panel;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.model.ViewState;
import stirtide.bar.scale.ScaleReading;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/**
 * What the terminal knows. Keys, messages and the passing of time go in, commands come out through {@link ServiceGateway}, and
 * {@link #scene} is what a picture is drawn from. For one thread only.
 */
public final class BarController {
    private final ServiceGateway outgoing;
    private final SignOnTracker signOn;
    private final KeyBurstFilter pace = new KeyBurstFilter();
    private final BarActions actions = new BarActions();
    private final AlarmTracker alarms = new AlarmTracker();
    private final MoveComparison effect = new MoveComparison();
    private final LocalServices aside;
    private final SetupTracker setup;
    private final ScaleTracker scale = new ScaleTracker();
    private ViewState pages = ViewState.BAR;
    private Optional<DayView> view = Optional.empty();
    private final ClockTracker clock;
    private final LinkTracker link;
    private BowlSelection picks = BowlSelection.FIRST;
    private Optional<Panel> panel = Optional.empty();
    private final NoticeList notes = new NoticeList();
    private boolean leaving;
    private boolean redraw;
    private boolean tooSmall;

    /** A desk that knows nothing yet; {@code startNanos} is the monotonic reading at the start. */
    public BarController(Operator operator, ServiceGateway outgoing, LocalServices aside, long startNanos) {
        this.outgoing = outgoing;
        signOn = new SignOnTracker(operator, outgoing, startNanos);
        this.aside = aside;
        setup = new SetupTracker(outgoing);
        clock = new ClockTracker(startNanos);
        link = new LinkTracker(startNanos);
    }

    /** Begins with a view; a kiosk cannot be left by a key. */
    public void open(KeyContext page, boolean asKiosk) {
        pages = asKiosk ? pages.to(page).staying() : pages.to(page);
    }

    /** Whether people may sign on here, and after how many minutes without a key they are signed off, 0 for never. */
    public void people(boolean maySignOn, int idleMinutes) {
        signOn.rules(maySignOn, idleMinutes);
    }

    /** Says whether the terminal is too small for the picture: then no key acts but those with control held. */
    public void tooSmall(boolean small) {
        tooSmall = small;
    }

    /** What to draw at a monotonic reading. */
    public UiState scene(long nanos) {
        return new UiState(
                view,
                clock.at(nanos),
                nanos,
                clock.ratePermille(),
                clock.canBeDriven(),
                link.line(nanos),
                signOn.operator(),
                picks,
                panel,
                notes.all(),
                pages,
                view.map(day -> alarms.board(day.alarms())).orElse(AlarmList.NONE),
                scale.line());
    }

    /** Whether the program is to end. */
    public boolean isLeaving() {
        return leaving;
    }

    /** Whether everything is to be drawn anew; asking clears it. */
    public boolean takeRedraw() {
        boolean wanted = redraw;
        redraw = false;
        return wanted;
    }

    /** Time has gone by. */
    public void tick(long nanos) {
        watch(nanos);
        signOn.tick(scene(nanos)).ifPresent(words -> notes.add(words, false));
        panel.ifPresent(open -> answer(open.tick(scene(nanos)), nanos));
    }

    /** The scale said something. */
    public void hear(ScaleReading reading, long nanos) {
        scale.hear(reading, nanos);
    }

    /** Whether the bell is to ring; asking clears it. */
    public boolean takeBell() {
        return alarms.takeBell();
    }

    private void watch(long nanos) {
        if (link.everHeard()) view.ifPresent(day -> alarms.look(day.alarms(), clock.at(nanos), nanos));
    }

    /** A message of the link. */
    public void hear(LinkEvent news, long nanos) {
        if (news instanceof LinkEvent.Seen seen) see(seen.view(), nanos);
        else if (news instanceof LinkEvent.Remembered old) remember(old.view(), nanos);
        else if (news instanceof LinkEvent.Heard) link.heard(nanos);
        else if (news instanceof LinkEvent.Cut lost) link.cut(lost.why());
        else if (news instanceof LinkEvent.Clock told) clock.told(told, link.everHeard(), nanos);
        else if (news instanceof LinkEvent.Waiting waiting) link.waiting(waiting.entries());
        else if (news instanceof LinkEvent.Taken taken) taken(taken, nanos);
        else if (news instanceof LinkEvent.Refused refused) refused(refused, nanos);
        else if (news instanceof LinkEvent.InForce told) pages = setup.told(pages, told.setup());
        else if (news instanceof LinkEvent.Past past) pages = pages.withPast(past.days());
        else if (news instanceof LinkEvent.Advised said)
            panel.ifPresent(open -> open.hear(said.advice(), said.poured()));
        else if (news instanceof LinkEvent.Tried told) pages = pages.with(told.advice());
        else if (news instanceof LinkEvent.SignOn who) hearSignOn(who, nanos);
        else if (news instanceof LinkEvent.Trouble trouble) notes.add(trouble.words(), true);
        else throw new IllegalStateException("no rule for " + news);
    }

    private void see(DayView newer, long nanos) {
        link.heard(nanos);
        view = Optional.of(newer);
        pages = pages.seen(newer);
        clock.seen(newer, nanos);
        watch(nanos);
        if (pages.page() == KeyContext.SETUP) setup.look(newer.revision());
        effect.seen(newer).ifPresent(words -> notes.add(words, true));
    }

    private void remember(DayView old, long nanos) {
        if (view.isPresent()) return;
        view = Optional.of(old);
        clock.remembered(old, nanos);
    }

    private void hearSignOn(LinkEvent.SignOn news, long nanos) {
        if (news instanceof LinkEvent.SignOn.Refused refused)
            panel.ifPresent(open -> open.signOnRefused(refused.sentence(), refused.waitSeconds(), nanos));
        // What is half typed belongs to who has left.
        if (news instanceof LinkEvent.SignOn.Ended) panel = Optional.empty();
        signOn.hear(news, scene(nanos)).ifPresent(words -> notes.add(words, news instanceof LinkEvent.SignOn.Ended));
    }

    private boolean answeredInPanel(DayCommand command, Optional<String> refusal, long nanos) {
        Optional<UiEffect> wanted = panel.flatMap(open -> open.answered(command, refusal));
        wanted.ifPresent(next -> answer(next, nanos));
        return wanted.isPresent();
    }

    private void taken(LinkEvent.Taken taken, long nanos) {
        answeredInPanel(taken.command(), Optional.empty(), nanos);
        notes.taken(taken);
    }

    private void refused(LinkEvent.Refused refused, long nanos) {
        if (answeredInPanel(refused.command(), Optional.of(refused.sentence()), nanos) && panel.isPresent()) return;
        notes.add("NOT TAKEN  " + refused.words() + ": " + refused.sentence(), true);
    }

    /** A key was pressed. */
    public void press(Key key) {
        KeyBurstFilter.Verdict verdict = pace.judge(key);
        if (key.is(Key.Kind.GONE)) leaving = true;
        if (verdict == KeyBurstFilter.Verdict.PASTE) notes.paste(key.is(Key.Kind.PASTE_ENDS));
        if (verdict == KeyBurstFilter.Verdict.DROP || verdict == KeyBurstFilter.Verdict.PASTE) return;
        boolean machine = verdict == KeyBurstFilter.Verdict.MACHINE;
        signOn.pressed(key.nanos());
        notes.pass();
        // Nobody begins a bowl that is not on the screen.
        if (tooSmall && !key.control()) return;
        if (panel.isPresent()) pressInPanel(key, machine);
        else if (machine) notes.add("keys faster than fingers ignored: open the weigh-in first (w)", false);
        else pressInView(key);
    }

    private void pressInPanel(Key key, boolean machine) {
        if (key.control()) {
            everywhere(key);
            return;
        }
        panel.ifPresent(open -> answer(open.press(key, machine, scene(key.nanos())), key.nanos()));
    }

    private void everywhere(Key key) {
        Optional<KeyAction> action = action(key);
        if (action.filter(KeyAction.REDRAW::equals).isPresent()) redraw = true;
        if (action.filter(KeyAction.LEAVE::equals).isPresent()) leave(key, true);
    }

    private void pressInView(Key key) {
        Optional<KeyAction> action = action(key);
        if (action.isEmpty()) panel = signOn.wanted(key, scene(key.nanos()));
        else doInView(action.get(), key);
    }

    private void doInView(KeyAction action, Key key) {
        switch (action) {
            case BACK -> back();
            case REDRAW -> redraw = true;
            case SIGN_ON -> answer(signOn.act(scene(key.nanos())), key.nanos());
            case LEAVE -> leave(key, key.control());
            default -> act(action, key.nanos());
        }
    }

    private Optional<KeyAction> action(Key key) {
        return KeyTable.action(pages.page(), key, signOn.operator().mayWrite(), clock.canBeDriven());
    }

    private void act(KeyAction action, long nanos) {
        Optional<UiEffect> shared = ViewActions.act(action, scene(nanos));
        if (shared.isPresent()) answer(shared.get(), nanos);
        else if (action == KeyAction.UP) view.ifPresent(day -> picks = picks.moved(-1, day));
        else if (action == KeyAction.DOWN) view.ifPresent(day -> picks = picks.moved(1, day));
        else if (action == KeyAction.OTHER_LIST) picks = picks.otherList();
        else answer(actions.act(action, scene(nanos)), nanos);
    }

    private void back() {
        notes.clear();
        pages = pages.with(pages.floor().putBack());
    }

    // Control-C ends a demonstration at once, and a terminal that has never reached its service.
    private void leave(Key key, boolean control) {
        if (pages.stays()) notes.add("this terminal stays: no key leaves it", false);
        else if (control && (clock.canBeDriven() || !link.everHeard())) leaving = true;
        else panel = Optional.of(BarActions.leaveQuestion(key.nanos(), link.waitingEntries()));
    }

    private void answer(UiEffect answer, long nanos) {
        if (answer instanceof UiEffect.Stay) return;
        if (answer instanceof UiEffect.Close || answer instanceof UiEffect.Shelve) panel = Optional.empty();
        if (LocalEffects.told(answer, aside, notes)
                || alarms.told(answer, signOn.operator().personId(), clock.at(nanos), outgoing, notes)) return;
        if (ServiceEffects.asked(answer, outgoing, signOn, clock, nanos)) return;
        if (answer instanceof UiEffect.Close) return;
        if (answer instanceof UiEffect.Open open) panel = Optional.of(open.next());
        else if (answer instanceof UiEffect.Leave) leaving = true;
        else if (answer instanceof UiEffect.Pick pick) pick(pick.bowl());
        else if (answer instanceof UiEffect.Send send) send(send);
        else if (answer instanceof UiEffect.Turn turn) turn(turn.pages());
        else if (answer instanceof UiEffect.Together all) all.sends().forEach(this::send);
        else if (answer instanceof UiEffect.AskPlanner ask) ask(ask, nanos);
        else throw new IllegalStateException("no rule for " + answer);
    }

    private void pick(String bowl) {
        panel = Optional.empty();
        view.ifPresent(day -> picks = picks.on(bowl, day));
    }

    private void turn(ViewState next) {
        setup.turned(pages.page(), next, view.map(DayView::revision).orElse(0L));
        pages = next;
    }

    private void ask(UiEffect.AskPlanner ask, long nanos) {
        var advice = new Inquiry(ask.ask(), nanos, Optional.empty());
        pages = pages.with(advice);
        panel = Optional.of(ask.next());
        outgoing.ask(advice);
    }

    private void send(UiEffect.Send send) {
        panel = send.next();
        effect.sent(send.command(), view);
        pages = pages.sent(send.command(), view);
        notes.add("sent: " + send.words(), false);
        outgoing.send(signOn.operator().personId(), send.command(), send.words());
    }
}
