package stirtide.bar.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.bar.clock.SalonTime;
import stirtide.bar.keys.Action;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyPace;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.keys.Place;
import stirtide.bar.link.LinkNews;
import stirtide.bar.link.Outgoing;
import stirtide.bar.scene.LinkLine;
import stirtide.bar.scene.Notice;
import stirtide.bar.scene.Operator;
import stirtide.bar.scene.Panel;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Picks;
import stirtide.bar.scene.Scene;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/**
 * What the terminal knows. Keys, messages and the passing of time go in, commands come out through {@link Outgoing}, and
 * {@link #scene} is what a picture is drawn from. For one thread only.
 */
public final class Desk {
    private static final int NANOS_TO_SECONDS = 1_000_000_000;
    private static final int MOST_NOTICES = 5;

    private final Operator operator;
    private final Outgoing outgoing;
    private final KeyPace pace = new KeyPace();
    private final BarActions actions = new BarActions();
    private Optional<DayView> view = Optional.empty();
    private SalonTime clock;
    private boolean clockCanBeDriven;
    private boolean everHeard;
    private boolean cut;
    private long heardNanos;
    private int waitingEntries;
    private Picks picks = Picks.FIRST;
    private Optional<Panel> panel = Optional.empty();
    private final List<Notice> notices = new ArrayList<>();
    private boolean leaving;
    private boolean redraw;
    private boolean pasteTold;

    /** A desk that knows nothing yet; {@code startNanos} is the monotonic reading at the start. */
    public Desk(Operator operator, Outgoing outgoing, long startNanos) {
        this.operator = operator;
        this.outgoing = outgoing;
        clock = new SalonTime(Instant.EPOCH, startNanos, 0);
        heardNanos = startNanos;
    }

    /** What to draw at a monotonic reading. */
    public Scene scene(long nanos) {
        long age = Math.max(0, nanos - heardNanos) / NANOS_TO_SECONDS;
        var link = new LinkLine(LinkLine.state(everHeard, cut, age), age, waitingEntries);
        return new Scene(
                view,
                clock.at(nanos),
                nanos,
                clock.ratePermille(),
                clockCanBeDriven,
                link,
                operator,
                picks,
                panel,
                List.copyOf(notices));
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
        panel.ifPresent(open -> answer(open.tick(scene(nanos)), nanos));
    }

    /** A message of the link. */
    public void hear(LinkNews news, long nanos) {
        if (news instanceof LinkNews.Seen seen) see(seen.view(), nanos);
        else if (news instanceof LinkNews.Remembered old) remember(old.view(), nanos);
        else if (news instanceof LinkNews.Heard) heard(nanos);
        else if (news instanceof LinkNews.Cut) cut = true;
        else if (news instanceof LinkNews.Clock told) hearClock(told, nanos);
        else if (news instanceof LinkNews.Waiting waiting) waitingEntries = waiting.entries();
        else if (news instanceof LinkNews.Taken taken) taken(taken);
        else if (news instanceof LinkNews.Refused refused) refused(refused);
        else if (news instanceof LinkNews.Trouble trouble) note(trouble.words(), true);
        else throw new IllegalStateException("no rule for " + news);
    }

    private void see(DayView newer, long nanos) {
        heard(nanos);
        view = Optional.of(newer);
        clock = new SalonTime(newer.time(), nanos, newer.clockRatePermille());
    }

    // A picture from disk stands still: nobody knows how fast the clock has run since.
    private void remember(DayView old, long nanos) {
        if (view.isPresent()) return;
        view = Optional.of(old);
        clock = new SalonTime(old.time(), nanos, 0);
    }

    private void heard(long nanos) {
        everHeard = true;
        cut = false;
        heardNanos = nanos;
    }

    private void hearClock(LinkNews.Clock told, long nanos) {
        clockCanBeDriven = told.canBeDriven();
        if (everHeard) clock = new SalonTime(told.now(), nanos, told.ratePermille());
    }

    private void taken(LinkNews.Taken taken) {
        note((taken.afterWaiting() ? "sent after waiting: " : "done: ") + taken.words(), false);
    }

    private void refused(LinkNews.Refused refused) {
        if (refused.command() instanceof DayCommand.BeginBowl begin
                && panel.map(Panel::standsOnBowl).orElse("").equals(begin.bowl())) {
            panel = Optional.empty();
        }
        note("NOT TAKEN  " + refused.words() + ": " + refused.sentence(), true);
    }

    private void note(String words, boolean lasting) {
        notices.removeIf(notice -> !notice.lasting());
        notices.add(new Notice(words, lasting));
        if (notices.size() > MOST_NOTICES) notices.remove(0);
    }

    /** A key was pressed. */
    public void press(Key key) {
        KeyPace.Verdict verdict = pace.judge(key);
        if (key.is(Key.Kind.GONE)) leaving = true;
        if (verdict == KeyPace.Verdict.PASTE) tellPaste(key);
        if (verdict == KeyPace.Verdict.DROP || verdict == KeyPace.Verdict.PASTE) return;
        boolean machine = verdict == KeyPace.Verdict.MACHINE;
        notices.removeIf(notice -> !notice.lasting());
        if (panel.isPresent()) pressInPanel(key, machine);
        else if (machine) note("keys faster than fingers ignored: open the weigh-in first (w)", false);
        else pressAtBar(key);
    }

    private void tellPaste(Key key) {
        if (!pasteTold) note("pasted text ignored", false);
        pasteTold = !key.is(Key.Kind.PASTE_ENDS);
    }

    private void pressInPanel(Key key, boolean machine) {
        if (key.control()) {
            everywhere(key);
            return;
        }
        panel.ifPresent(open -> answer(open.press(key, machine, scene(key.nanos())), key.nanos()));
    }

    private void everywhere(Key key) {
        KeyTable.action(Place.BAR, key, operator.mayWrite(), clockCanBeDriven).ifPresent(action -> {
            if (action == Action.REDRAW) redraw = true;
            if (action == Action.LEAVE) leave(key, true);
        });
    }

    private void pressAtBar(Key key) {
        Optional<Action> action = KeyTable.action(Place.BAR, key, operator.mayWrite(), clockCanBeDriven);
        if (action.isEmpty()) return;
        switch (action.get()) {
            case UP -> move(-1);
            case DOWN -> move(1);
            case OTHER_LIST -> picks = picks.otherList();
            case BACK -> notices.clear();
            case REDRAW -> redraw = true;
            case LEAVE -> leave(key, key.control());
            default -> answer(actions.act(action.get(), scene(key.nanos())), key.nanos());
        }
    }

    private void move(int rows) {
        view.ifPresent(day -> picks = picks.moved(rows, day));
    }

    // Control-C ends a demonstration at once, and a terminal that has never reached its service.
    private void leave(Key key, boolean control) {
        if (control && (clockCanBeDriven || !everHeard)) leaving = true;
        else panel = Optional.of(BarActions.leaveQuestion(key.nanos(), waitingEntries));
    }

    private void answer(PanelAnswer answer, long nanos) {
        if (answer instanceof PanelAnswer.Stay) return;
        if (answer instanceof PanelAnswer.Close) panel = Optional.empty();
        else if (answer instanceof PanelAnswer.Open open) panel = Optional.of(open.next());
        else if (answer instanceof PanelAnswer.Leave) leaving = true;
        else if (answer instanceof PanelAnswer.Say say) note(say.words(), false);
        else if (answer instanceof PanelAnswer.Pick pick) pick(pick.bowl());
        else if (answer instanceof PanelAnswer.Rate rate) drive(rate.ratePermille(), nanos);
        else if (answer instanceof PanelAnswer.Send send) send(send);
        else throw new IllegalStateException("no rule for " + answer);
    }

    private void pick(String bowl) {
        panel = Optional.empty();
        view.ifPresent(day -> picks = picks.on(bowl, day));
    }

    private void drive(int ratePermille, long nanos) {
        clock = clock.atRate(ratePermille, nanos);
        outgoing.setClockRate(ratePermille);
    }

    private void send(PanelAnswer.Send send) {
        panel = send.next();
        note("sent: " + send.words(), false);
        outgoing.send(send.command(), send.words());
    }
}
