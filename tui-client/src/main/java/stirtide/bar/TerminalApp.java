package stirtide.bar;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import stirtide.bar.canvas.Canvas;
import stirtide.bar.cli.BarOptions;
import stirtide.bar.controller.BarController;
import stirtide.bar.keys.Key;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.link.ServiceLink;
import stirtide.bar.link.StateFolder;
import stirtide.bar.model.AlarmList;
import stirtide.bar.model.FollowedClock;
import stirtide.bar.model.Operator;
import stirtide.bar.model.UiState;
import stirtide.bar.scale.ScaleInput;
import stirtide.bar.scale.ScaleReading;
import stirtide.bar.terminal.BarTerminal;
import stirtide.bar.terminal.CanvasPainter;
import stirtide.bar.terminal.ColorDepth;
import stirtide.bar.terminal.FrameBuffer;
import stirtide.bar.terminal.KeyReader;
import stirtide.bar.views.ScreenView;

/** The live terminal: one thread owns controller and screen; keys, the link and resizes reach it through one queue. */
final class TerminalApp {
    private static final long NANOS_PER_MILLI = 1_000_000L;
    /** Events of the link are drawn no more often; keys and the scale are answered at once. */
    private static final long FRAME_NANOS = 150 * NANOS_PER_MILLI;

    private static final long DRIVEN_TICK_MILLIS = 250;
    private static final long SECOND_MILLIS = 1000;
    private static final long BLINK_TICK_MILLIS = AlarmList.HALF_TURN_NANOS / NANOS_PER_MILLI / 2;

    private final BarOptions options;
    private final PrintStream errors;
    private final TerminalOpener opener;
    private final BlockingQueue<Message> messages = new LinkedBlockingQueue<>();
    private final FilesAndClipboard local;
    private final BarController controller;
    private final StateFolder folder;
    private TerminalSize size = new TerminalSize(ScreenView.LEAST_COLUMNS, ScreenView.LEAST_ROWS);
    private boolean wholeFrame = true;
    private long paintedNanos;
    private boolean unpainted;

    /** Opens the terminal. */
    interface TerminalOpener {
        Terminal open() throws IOException;
    }

    private sealed interface Message {
        record KeyPressed(Key key) implements Message {}

        record LinkReported(LinkEvent event) implements Message {}

        record ScaleRead(ScaleReading reading) implements Message {}

        record Resized(TerminalSize size) implements Message {}

        record ThreadFailed(Throwable cause) implements Message {}
    }

    TerminalApp(BarOptions options, PrintStream errors) {
        this(options, errors, () -> ownTerminal(options));
    }

    TerminalApp(BarOptions options, PrintStream errors, TerminalOpener opener) {
        this.options = options;
        this.errors = errors;
        this.opener = opener;
        local = new FilesAndClipboard(options.reports());
        String personId = options.source().personId();
        var operator = new Operator(personId, !options.readOnly() && !personId.isEmpty());
        controller = new BarController(operator, local, System.nanoTime());
        controller.open(options.appearance().view(), options.kiosk());
        controller.people(!options.readOnly(), options.idleMinutes());
        folder = new StateFolder(options.state(), options.source().day());
    }

    private static Terminal ownTerminal(BarOptions options) throws IOException {
        boolean marks = options.appearance().synchronizedOutput();
        var frame = new FrameBuffer(new FileOutputStream(FileDescriptor.out), marks);
        return new BarTerminal(System.in, frame, options.appearance().depth() == ColorDepth.NONE);
    }

    /** Runs until the terminal is left; the answer is the exit code. */
    int run() throws InterruptedException {
        // Read while the terminal is prepared, which takes as long.
        daemon("stored-view", () -> folder.remembered().ifPresent(view -> hear(new LinkEvent.Remembered(view))));
        Terminal terminal;
        try {
            terminal = opener.open();
        } catch (IOException noTerminal) {
            return SnapshotPrinter.print(options, System.out, errors);
        }
        PrintStream usualOut = System.out;
        PrintStream usualErrors = System.err;
        // Whatever a library prints would break the picture.
        ErrorLog.redirect(options.state());
        Thread.setDefaultUncaughtExceptionHandler((thread, cause) -> messages.add(new Message.ThreadFailed(cause)));
        try {
            return show(terminal);
        } finally {
            System.setOut(usualOut);
            System.setErr(usualErrors);
        }
    }

    private int show(Terminal terminal) throws InterruptedException {
        Throwable fault = null;
        int code = BarExitCode.OK;
        try {
            live(terminal);
        } catch (IOException terminalGone) {
            code = BarExitCode.TERMINAL_GONE;
        } catch (RuntimeException | Error broken) {
            fault = broken;
            code = BarExitCode.INTERNAL;
        } finally {
            leave(terminal);
        }
        if (fault != null) {
            fault.printStackTrace();
            errors.println("bar: a fault of the program ended it: " + fault + "; "
                    + options.state().resolve("bar.log") + " has the details. Nothing entered is lost.");
        }
        return code;
    }

    private static void leave(Terminal terminal) {
        try {
            terminal.close();
        } catch (IOException gone) {
            System.err.println("the terminal is gone: " + gone.getMessage());
        } catch (IllegalStateException alreadyLeaving) {
            // A signal ends the program meanwhile, and its shutdown hook restores the terminal.
        }
    }

    private void live(Terminal terminal) throws IOException, InterruptedException {
        terminal.addResizeListener((changed, newSize) -> messages.add(new Message.Resized(newSize)));
        terminal.enterPrivateMode();
        size = terminal.getTerminalSize();
        var painter = new CanvasPainter(
                terminal, options.appearance().theme(), options.appearance().depth());
        // The stored view if it is read already, else that the link is being opened: never an empty screen.
        takeAll();
        paint(painter);
        options.scale()
                .ifPresent(wanted -> daemon(
                        "scale", new ScaleInput(wanted, reading -> messages.add(new Message.ScaleRead(reading)))));
        KeyReader.start(terminal, key -> messages.add(new Message.KeyPressed(key)));
        BarOptions.DaySource source = options.source();
        try (var link =
                ServiceLink.start(source.client(), folder, source.personId(), new ViewKeeper(folder, this::hear))) {
            controller.connect(link);
            loop(terminal, painter);
        }
    }

    private static void daemon(String name, Runnable task) {
        var thread = new Thread(task, name);
        thread.setDaemon(true);
        thread.start();
    }

    private void hear(LinkEvent event) {
        messages.add(new Message.LinkReported(event));
    }

    // Ends: the queue is emptied faster than it is filled.
    private void takeAll() {
        for (Message message = messages.poll(); message != null; message = messages.poll()) take(message);
    }

    private void loop(Terminal terminal, CanvasPainter painter) throws IOException, InterruptedException {
        while (!controller.isLeaving()) {
            Message message = messages.poll(nanosToNextTick(System.nanoTime()), TimeUnit.NANOSECONDS);
            boolean atOnce = message == null;
            // Ends: each round takes a message off the queue, and a burst of them is one frame.
            while (message != null) {
                atOnce |= !(message instanceof Message.LinkReported);
                take(message);
                message = messages.poll();
            }
            controller.tick(System.nanoTime());
            if (controller.takeBell() && options.bell()) terminal.bell();
            if (terminal instanceof BarTerminal own) local.sendCopied(own);
            wholeFrame |= controller.takeRedraw();
            unpainted = true;
            if (atOnce || System.nanoTime() - paintedNanos >= FRAME_NANOS) paint(painter);
            // A bell or a copied text may be all there is: a picture without change takes nothing along.
            terminal.flush();
        }
    }

    private void take(Message message) {
        if (message instanceof Message.KeyPressed pressed) controller.press(pressed.key());
        else if (message instanceof Message.LinkReported report) controller.hear(report.event(), System.nanoTime());
        else if (message instanceof Message.ScaleRead scale) controller.hear(scale.reading(), System.nanoTime());
        else if (message instanceof Message.Resized resized) {
            wholeFrame |= !resized.size().equals(size);
            size = resized.size();
        } else if (message instanceof Message.ThreadFailed failed)
            throw new IllegalStateException("a thread failed", failed.cause());
    }

    // Whole seconds of the salon's clock when it runs at real speed, four times a second when it is driven faster.
    private long nanosToNextTick(long now) {
        UiState state = controller.state(now);
        long millis = state.ratePermille() > FollowedClock.REAL
                ? DRIVEN_TICK_MILLIS
                : SECOND_MILLIS - Math.floorMod(state.now().toEpochMilli(), SECOND_MILLIS);
        if (state.ratePermille() < FollowedClock.REAL) millis = SECOND_MILLIS;
        if (state.alarms().blinks(now)) millis = Math.min(millis, BLINK_TICK_MILLIS);
        long tick = millis * NANOS_PER_MILLI;
        return unpainted ? Math.min(tick, Math.max(0, paintedNanos + FRAME_NANOS - now)) : tick;
    }

    private void paint(CanvasPainter painter) throws IOException {
        long now = System.nanoTime();
        int columns = size.getColumns();
        int rows = size.getRows();
        controller.tooSmall(ScreenView.isTooSmall(columns, rows));
        Canvas canvas = ScreenView.draw(
                controller.state(now), columns, rows, options.appearance().glyphs());
        painter.paint(canvas, wholeFrame);
        wholeFrame = false;
        paintedNanos = now;
        unpainted = false;
    }
}
