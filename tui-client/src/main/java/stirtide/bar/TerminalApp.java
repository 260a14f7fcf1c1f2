package stirtide.bar;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.screen.TerminalScreen;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import stirtide.bar.canvas.Canvas;
import stirtide.bar.controller.BarController;
import stirtide.bar.controller.LocalServices;
import stirtide.bar.keys.Key;
import stirtide.bar.link.DayClient;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.link.ServiceLink;
import stirtide.bar.link.StateFolder;
import stirtide.bar.model.AlarmList;
import stirtide.bar.model.DayOverMix;
import stirtide.bar.model.FollowedClock;
import stirtide.bar.model.Operator;
import stirtide.bar.model.UiState;
import stirtide.bar.report.DayFiles;
import stirtide.bar.report.SalonFiles;
import stirtide.bar.scale.ScaleInput;
import stirtide.bar.scale.ScaleReading;
import stirtide.bar.terminal.BarTerminal;
import stirtide.bar.terminal.CanvasPainter;
import stirtide.bar.terminal.ColorDepth;
import stirtide.bar.terminal.FrameBuffer;
import stirtide.bar.terminal.KeyReader;
import stirtide.bar.views.ScreenView;
import stirtide.events.view.DayView;
import stirtide.events.view.SetupView;

/** The live terminal: one thread owns desk and screen; keys, the link and resizes reach it through one queue. */
final class TerminalApp {
    private static final long NANOS_PER_MILLI = 1_000_000L;
    /** What the service tells is drawn no more often; keys and the scale are answered at once. */
    private static final long FRAME_NANOS = 150 * NANOS_PER_MILLI;

    private static final long DRIVEN_TICK_MILLIS = 250;
    private static final long SECOND_MILLIS = 1000;
    private static final long BLINK_TICK_MILLIS = AlarmList.HALF_TURN_NANOS / NANOS_PER_MILLI / 2;
    private static final long REMEMBER_NANOS = 10_000 * NANOS_PER_MILLI;

    private final BarOptions options;
    private final PrintStream errors;
    private final BlockingQueue<Message> messages = new LinkedBlockingQueue<>();
    private final DeferredGateway outgoing = new DeferredGateway();
    private final BarController desk;
    private final StateFolder home;
    private long paintedNanos;
    private boolean unpainted;
    private String clipboard = "";

    TerminalApp(BarOptions options, PrintStream errors) {
        this.options = options;
        this.errors = errors;
        var operator = new Operator(
                options.personId(), !options.readOnly() && !options.personId().isEmpty());
        desk = new BarController(operator, outgoing, new Machine(), System.nanoTime());
        desk.open(options.view(), options.kiosk());
        desk.people(!options.readOnly(), options.idleMinutes());
        home = new StateFolder(options.state(), options.day());
    }

    private sealed interface Message {
        record Pressed(Key key) implements Message {}

        record Told(LinkEvent news) implements Message {}

        record Weighed(ScaleReading reading) implements Message {}

        record Resized() implements Message {}

        record Crashed(Throwable cause) implements Message {}
    }

    /** Runs until somebody leaves; the answer is the exit code. */
    int run() throws InterruptedException {
        // Read beside the terminal's own preparations: reading it takes as long as they do.
        daemon(
                "picture",
                () -> home.remembered()
                        .ifPresent(view -> messages.add(new Message.Told(new LinkEvent.Remembered(view)))));
        BarTerminal terminal;
        try {
            var frame = new FrameBuffer(new FileOutputStream(FileDescriptor.out), options.synchronizedOutput());
            terminal = new BarTerminal(System.in, frame, options.depth() == ColorDepth.NONE);
        } catch (IOException noTerminal) {
            return SnapshotPrinter.print(options, System.out, errors);
        }
        PrintStream usualOut = System.out;
        PrintStream usualErrors = System.err;
        // Whatever a library prints would break the picture.
        redirect(options.state());
        Thread.setDefaultUncaughtExceptionHandler((thread, cause) -> messages.add(new Message.Crashed(cause)));
        try {
            return show(terminal);
        } finally {
            System.setOut(usualOut);
            System.setErr(usualErrors);
        }
    }

    private static void redirect(Path state) {
        try {
            Files.createDirectories(state);
            var log = new PrintStream(
                    new FileOutputStream(state.resolve("bar.log").toFile(), true), true, StandardCharsets.UTF_8);
            System.setOut(log);
            System.setErr(log);
        } catch (IOException noLog) {
            System.setOut(new PrintStream(PrintStream.nullOutputStream(), false, StandardCharsets.UTF_8));
            System.setErr(System.out);
        }
    }

    private int show(BarTerminal terminal) throws InterruptedException {
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

    private static void leave(BarTerminal terminal) {
        try {
            terminal.close();
        } catch (IOException gone) {
            System.err.println("the terminal is gone: " + gone.getMessage());
        } catch (IllegalStateException alreadyLeaving) {
            // A signal ends the program meanwhile, and what it runs at its end restores the terminal.
        }
    }

    private void live(BarTerminal terminal) throws IOException, InterruptedException {
        var screen = new TerminalScreen(terminal);
        terminal.addResizeListener((changed, size) -> messages.add(new Message.Resized()));
        screen.startScreen();
        var painter = new CanvasPainter(terminal, options.theme(), options.depth());
        // The kept picture if it is read already, else that we connect: nobody waits before an empty screen.
        hearWhatCame();
        paint(screen, painter, true);
        options.scale().ifPresent(this::startScale);
        KeyReader.start(terminal, key -> messages.add(new Message.Pressed(key)));
        try (var link = ServiceLink.start(
                new DayClient(options.server(), options.day(), options.credentials()),
                home,
                options.personId(),
                new Relay(home))) {
            outgoing.reach(link);
            loop(terminal, screen, painter);
        }
    }

    private void startScale(ScaleInput.Wanted wanted) {
        var scale = new ScaleInput(wanted, reading -> messages.add(new Message.Weighed(reading)));
        daemon("scale", scale);
    }

    private static void daemon(String name, Runnable task) {
        var thread = new Thread(task, name);
        thread.setDaemon(true);
        thread.start();
    }

    private void hearWhatCame() {
        // Ends: the queue is emptied faster than anybody fills it.
        for (Message message = messages.poll(); message != null; message = messages.poll()) take(message);
    }

    private void loop(BarTerminal terminal, TerminalScreen screen, CanvasPainter painter)
            throws IOException, InterruptedException {
        while (!desk.isLeaving()) {
            long now = System.nanoTime();
            Message message = messages.poll(nanosToNextTick(now), TimeUnit.NANOSECONDS);
            boolean atOnce = message == null;
            // Ends: each round takes a message off the queue, and a burst of them is one frame.
            while (message != null) {
                atOnce |= !(message instanceof Message.Told);
                take(message);
                message = messages.poll();
            }
            desk.tick(System.nanoTime());
            aside(terminal);
            unpainted = true;
            if (atOnce || System.nanoTime() - paintedNanos >= FRAME_NANOS) paint(screen, painter, desk.takeRedraw());
            // A bell or a copied text may be all there is: the picture had nothing new to take it along.
            terminal.flush();
        }
    }

    // What goes to the terminal beside the picture leaves with the frame of this round.
    private void aside(BarTerminal terminal) throws IOException {
        if (desk.takeBell() && options.bell()) terminal.bell();
        if (!clipboard.isEmpty()) terminal.copy(clipboard);
        clipboard = "";
    }

    private void take(Message message) {
        if (message instanceof Message.Pressed pressed) desk.press(pressed.key());
        else if (message instanceof Message.Told told) desk.hear(told.news(), System.nanoTime());
        else if (message instanceof Message.Weighed weighed) desk.hear(weighed.reading(), System.nanoTime());
        else if (message instanceof Message.Crashed crashed)
            throw new IllegalStateException("a thread broke", crashed.cause());
    }

    // Whole seconds of the salon's clock when it runs at real speed, four times a second when it is driven faster.
    private long nanosToNextTick(long now) {
        UiState scene = desk.state(now);
        long millis = scene.ratePermille() > FollowedClock.REAL
                ? DRIVEN_TICK_MILLIS
                : SECOND_MILLIS - Math.floorMod(scene.now().toEpochMilli(), SECOND_MILLIS);
        if (scene.ratePermille() < FollowedClock.REAL) millis = SECOND_MILLIS;
        if (scene.board().blinks(now)) millis = Math.min(millis, BLINK_TICK_MILLIS);
        long tick = millis * NANOS_PER_MILLI;
        return unpainted ? Math.min(tick, Math.max(0, paintedNanos + FRAME_NANOS - now)) : tick;
    }

    private void paint(TerminalScreen screen, CanvasPainter painter, boolean whole) throws IOException {
        TerminalSize resized = screen.doResizeIfNecessary();
        TerminalSize size = screen.getTerminalSize();
        long now = System.nanoTime();
        desk.tooSmall(ScreenView.isTooSmall(size.getColumns(), size.getRows()));
        Canvas canvas = ScreenView.draw(desk.state(now), size.getColumns(), size.getRows(), options.glyphs());
        painter.paint(canvas, whole || resized != null);
        paintedNanos = now;
        unpainted = false;
    }

    /** Hands messages of the link to the loop and keeps a picture for the next start now and then. */
    private final class Relay implements Consumer<LinkEvent> {
        private final StateFolder home;
        private long rememberedNanos = System.nanoTime() - REMEMBER_NANOS;

        Relay(StateFolder home) {
            this.home = home;
        }

        @Override
        public void accept(LinkEvent news) {
            messages.add(new Message.Told(news));
            if (!(news instanceof LinkEvent.Seen seen) || System.nanoTime() - rememberedNanos < REMEMBER_NANOS) return;
            rememberedNanos = System.nanoTime();
            try {
                home.remember(seen.view());
            } catch (IOException diskTrouble) {
                System.err.println("the picture cannot be kept: " + diskTrouble);
            }
        }
    }

    /** Files and the clipboard of this machine. */
    private final class Machine implements LocalServices {
        @Override
        public String export(DayView view, List<DayOverMix> past) {
            return new DayFiles(options.reports()).write(view, past);
        }

        @Override
        public String writeFiles(SetupView setup) {
            return new SalonFiles(options.reports()).write(setup);
        }

        @Override
        public String copy(String text) {
            clipboard = text;
            return "copied: " + text;
        }
    }
}
