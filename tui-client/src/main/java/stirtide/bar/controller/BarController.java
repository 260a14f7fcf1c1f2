package stirtide.bar.controller;

import java.util.Optional;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyBurstFilter;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.link.ServiceGateway;
import stirtide.bar.model.Operator;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.scale.ScaleReading;

/**
 * The update loop of the terminal. Keys, messages and the passing of time go in, commands come out through
 * {@link ServiceGateway}, and {@link #state} is what a picture is drawn from. For one thread only.
 */
public final class BarController {
    private final UiModel model;
    private final EffectRunner effects;
    private final LinkEventHandler linkEvents;
    private final KeyBurstFilter bursts = new KeyBurstFilter();
    private final BarActions actions = new BarActions();
    private boolean redraw;
    private boolean tooSmall;

    /** A controller that knows nothing yet; {@code startNanos} is the monotonic reading at the start. */
    public BarController(Operator operator, LocalServices local, long startNanos) {
        model = new UiModel(operator, startNanos);
        effects = new EffectRunner(model, local);
        linkEvents = new LinkEventHandler(model, effects);
    }

    /** Sends what people ask for to a service from now on; before, nothing is sent. */
    public void connect(ServiceGateway service) {
        model.service = service;
    }

    /** Begins with a view; a kiosk cannot be left by a key. */
    public void open(KeyContext view, boolean asKiosk) {
        model.pages = asKiosk ? model.pages.to(view).withStays(true) : model.pages.to(view);
    }

    /** Whether people may sign on here, and after how many minutes without a key they are signed off, 0 for never. */
    public void people(boolean maySignOn, int idleMinutes) {
        model.signOn.rules(maySignOn, idleMinutes);
    }

    /** Says whether the terminal is too small for the picture: then only keys with Control held act. */
    public void tooSmall(boolean small) {
        tooSmall = small;
    }

    /** What to draw at a monotonic reading. */
    public UiState state(long nanos) {
        return model.state(nanos);
    }

    /** Whether the program is to end. */
    public boolean isLeaving() {
        return model.leaving;
    }

    /** Whether everything is to be drawn anew; asking clears it. */
    public boolean takeRedraw() {
        boolean wanted = redraw;
        redraw = false;
        return wanted;
    }

    /** Whether the bell is to ring; asking clears it. */
    public boolean takeBell() {
        return model.alarms.takeBell();
    }

    /** Time has gone by. */
    public void tick(long nanos) {
        model.lookAtAlarms(nanos);
        model.signOn.tick(state(nanos)).ifPresent(words -> model.notices.add(words, false));
        model.panel.ifPresent(open -> effects.run(open.tick(state(nanos)), nanos));
    }

    /** A reading of the scale. */
    public void hear(ScaleReading reading, long nanos) {
        model.hear(reading, nanos);
    }

    /** A message of the connection to the service. */
    public void hear(LinkEvent event, long nanos) {
        linkEvents.hear(event, nanos);
    }

    /** A key was pressed. */
    public void press(Key key) {
        KeyBurstFilter.Verdict verdict = bursts.judge(key);
        if (key.is(Key.Kind.GONE)) model.leaving = true;
        if (verdict == KeyBurstFilter.Verdict.PASTE) model.notices.paste(key.is(Key.Kind.PASTE_ENDS));
        if (verdict == KeyBurstFilter.Verdict.DROP || verdict == KeyBurstFilter.Verdict.PASTE) return;
        boolean machine = verdict == KeyBurstFilter.Verdict.MACHINE;
        model.signOn.pressed(key.nanos());
        model.notices.pass();
        // No bowl is begun that is not on the screen.
        if (tooSmall && !key.control()) return;
        if (model.panel.isPresent()) pressInPanel(key, machine);
        else if (machine) model.notices.add("keys faster than fingers ignored: open the weigh-in first (w)", false);
        else pressInView(key);
    }

    private void pressInPanel(Key key, boolean machine) {
        if (!key.control()) {
            model.panel.ifPresent(open -> effects.run(open.press(key, machine, state(key.nanos())), key.nanos()));
            return;
        }
        Optional<KeyAction> action = action(key);
        if (action.filter(KeyAction.REDRAW::equals).isPresent()) redraw = true;
        if (action.filter(KeyAction.LEAVE::equals).isPresent()) leave(key);
    }

    private void pressInView(Key key) {
        Optional<KeyAction> action = action(key);
        if (action.isEmpty()) model.panel = model.signOn.wanted(key, state(key.nanos()));
        else act(action.get(), key);
    }

    private Optional<KeyAction> action(Key key) {
        boolean mayWrite = model.signOn.operator().mayWrite();
        return KeyTable.action(model.pages.page(), key, mayWrite, model.clockCanBeDriven);
    }

    private void act(KeyAction action, Key key) {
        switch (action) {
            case BACK -> {
                model.notices.clear();
                model.pages = model.pages.withFloor(model.pages.floor().putBack());
            }
            case REDRAW -> redraw = true;
            case SIGN_ON -> effects.run(model.signOn.act(state(key.nanos())), key.nanos());
            case LEAVE -> leave(key);
            default -> actInView(action, key.nanos());
        }
    }

    private void actInView(KeyAction action, long nanos) {
        Optional<UiEffect> shared = ViewActions.act(action, state(nanos));
        if (shared.isPresent()) effects.run(shared.get(), nanos);
        else if (action == KeyAction.UP) model.view.ifPresent(day -> model.picks = model.picks.moved(-1, day));
        else if (action == KeyAction.DOWN) model.view.ifPresent(day -> model.picks = model.picks.moved(1, day));
        else if (action == KeyAction.OTHER_LIST) model.picks = model.picks.otherList();
        else effects.run(actions.act(action, state(nanos)), nanos);
    }

    // Control-C ends a demonstration at once, and a terminal that has never reached its service.
    private void leave(Key key) {
        boolean atOnce = key.control() && (model.clockCanBeDriven || !model.link.everHeard());
        if (model.pages.stays()) model.notices.add("this terminal stays: no key leaves it", false);
        else if (atOnce) model.leaving = true;
        else model.panel = Optional.of(BarActions.leaveQuestion(key.nanos(), model.link.waitingEntries()));
    }
}
